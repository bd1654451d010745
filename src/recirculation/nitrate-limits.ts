import type { SourceKey } from '../sources.js';

/** Most nitrate that drinking water may hold. */
export interface NitrateLimit {
  readonly counts: 'NO3' | 'N';
  /** kg/m3. */
  readonly limit: number;
  readonly source: SourceKey;
  readonly mark: 'seen' | 'seen second-hand';
}

/** Limits for nitrate in drinking water: 50 mg/L of nitrate (WHO guideline, and the European Union), 10 mg/L of its nitrogen (United States). */
export const nitrateLimits = {
  nitrate: { counts: 'NO3', limit: 0.05, source: 'who-nitrate', mark: 'seen second-hand' },
  nitrogen: { counts: 'N', limit: 0.01, source: 'epa-nitrate', mark: 'seen' },
} as const satisfies Readonly<Record<string, NitrateLimit>>;
