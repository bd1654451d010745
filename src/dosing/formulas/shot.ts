import { wholeUpward } from './whole-upward.js';

/** Volume of one irrigation shot as a share of the substrate a plant stands in: m3. */
export function shotVolume(substrateVolume: number, share: number): number {
  return substrateVolume * share;
}

/** Least whole number of equal shots, none above a volume (m3), that give a daily volume (m3). */
export function shotsForVolume(dailyVolume: number, largestShot: number): number {
  return wholeUpward(dailyVolume / largestShot);
}
