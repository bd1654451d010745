import type { SourceKey } from '../sources.js';
import { appliedVolumeForDrain } from './formulas/drain.js';
import { isAbove } from './is-above.js';

/** Share that usually drains on a day with so much light outside. */
export interface UsualDrain {
  /** Radiation sum of the day outside up to which the row holds, J/m². */
  readonly upTo: number;
  readonly lowest: number;
  readonly highest: number;
  readonly source: SourceKey;
}

/** Usual drain by the light of the day, for a fertilised substrate given 3.0 and drained at 4.5 mS/cm. Common practice, as a grower's journal of 2020 gives it. */
export const usualDrains: readonly UsualDrain[] = [
  { upTo: 5e6, lowest: 0, highest: 0.1, source: 'common-practice' },
  { upTo: 1e7, lowest: 0.1, highest: 0.2, source: 'common-practice' },
  { upTo: 1.5e7, lowest: 0.2, highest: 0.3, source: 'common-practice' },
  { upTo: Infinity, lowest: 0.3, highest: 0.4, source: 'common-practice' },
];

/** The row of the usual drain for a radiation sum, J/m². An edge belongs to the duller days, but for the first, which the table has as below 500 J/cm². */
export const usualDrainFor = (radiationSum: number): UsualDrain => usualDrains.find(({ upTo }, i) => (i === 0 ? radiationSum < upTo : radiationSum <= upTo))!;

/** Whether a share, to the nearest per cent, drains as it usually does. */
export function isUsual(drainShare: number, { lowest, highest }: UsualDrain): boolean {
  const seen = Math.round(drainShare * 100) / 100;
  return !isAbove(lowest, seen) && !isAbove(seen, highest);
}

/**
 * How a drain that is not usual for the light comes to be: the usual row, the nearest usual share, and the volume to give for it with the same uptake.
 * Undefined where it is usual, or where nothing is taken up and no volume would do.
 */
export function towardsUsualDrain(drainShare: number, uptake: number, radiationSum: number): { readonly usual: UsualDrain; readonly towards: number; readonly wanted: number } | undefined {
  const usual = usualDrainFor(radiationSum);
  if (isUsual(drainShare, usual) || !isAbove(1, drainShare)) return undefined;
  const towards = drainShare < usual.lowest ? usual.lowest : usual.highest;
  return { usual, towards, wanted: appliedVolumeForDrain(uptake, towards) };
}
