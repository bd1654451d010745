import type { SourceKey } from '../sources.js';

/** Height that pumps lift cold water by suction in practice. */
export interface PracticalSuctionLift {
  /** Altitude of the site, m. */
  readonly altitude: number;
  /** m */
  readonly lift: number;
  readonly source: SourceKey;
}

/** Practical suction lifts, by altitude; the published altitudes are steps of a quarter of a mile. */
export const practicalSuctionLifts: readonly PracticalSuctionLift[] = [
  { altitude: 0, lift: 6.7, source: 'engineering-toolbox-suction' },
  { altitude: 402, lift: 6.4, source: 'engineering-toolbox-suction' },
  { altitude: 805, lift: 6.1, source: 'engineering-toolbox-suction' },
  { altitude: 1207, lift: 5.5, source: 'engineering-toolbox-suction' },
  { altitude: 1609, lift: 5.2, source: 'engineering-toolbox-suction' },
  { altitude: 2012, lift: 4.9, source: 'engineering-toolbox-suction' },
  { altitude: 2414, lift: 4.6, source: 'engineering-toolbox-suction' },
  { altitude: 3219, lift: 4.3, source: 'engineering-toolbox-suction' },
];
