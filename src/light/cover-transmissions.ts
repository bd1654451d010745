import type { SourceKey } from '../sources.js';

/** How much light a cover lets through, as a range of fractions. */
export interface CoverTransmission {
  readonly low: number;
  readonly high: number;
  readonly source: SourceKey;
  readonly mark: 'seen' | 'from memory';
}

/** Panels, new and clean, for light that falls on them squarely; and whole houses, with frame, dirt, slant and condensation, which is what plants get. */
export const coverTransmissions = {
  'single glass': { low: 0.88, high: 0.88, source: 'glazing-trade', mark: 'seen' },
  'double glass': { low: 0.77, high: 0.77, source: 'glazing-trade', mark: 'seen' },
  'twin-wall polycarbonate': { low: 0.78, high: 0.82, source: 'extension-glazing', mark: 'seen' },
  'triple-wall polycarbonate': { low: 0.70, high: 0.75, source: 'common-practice', mark: 'from memory' },
  'double-wall acrylic': { low: 0.85, high: 0.90, source: 'extension-glazing', mark: 'seen' },
  'single polyethylene film': { low: 0.85, high: 0.88, source: 'common-practice', mark: 'from memory' },
  'double polyethylene film': { low: 0.75, high: 0.78, source: 'common-practice', mark: 'from memory' },
  'whole house, well kept glass': { low: 0.70, high: 0.70, source: 'common-practice', mark: 'from memory' },
  'whole house, double film or old': { low: 0.60, high: 0.60, source: 'common-practice', mark: 'from memory' },
  'whole house': { low: 0.55, high: 0.70, source: 'common-practice', mark: 'from memory' },
} as const satisfies Readonly<Record<string, CoverTransmission>>;

/** Share of the light that a cover of the table lets through, lowest and highest. */
export const coverTransmissionOf = (cover: keyof typeof coverTransmissions): CoverTransmission => coverTransmissions[cover];
