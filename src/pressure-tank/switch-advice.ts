import { bracketedRoot } from '../numerics/roots.js';
import { leastFlow, pumpPhases, type PumpedTank } from './formulas/pumped-tank.js';
import { usualPreCharge } from './tank.js';

/** Settings of which each alone would halve the starts of a pump; undefined where none does. */
export interface HalfTheStarts {
  readonly tankVolume: number;
  readonly cutOut: number | undefined;
  readonly cutIn: number | undefined;
  /** The pre-charge that goes with that cut-in. */
  readonly preCharge: number | undefined;
}

/** The highest cut-out and the lowest cut-in that a switch takes here, Pa. */
const [lowest, highest] = [10e3, 2e6];

/** A cut-out is kept this much below the pressure at which the pump only just gives what is drawn. Common practice, no source. */
const keptBelow = 0.95;

/** Settings are found to this, Pa. */
const tolerance = 0.01;

const startRate = (tank: PumpedTank): number => {
  const { run, rest } = pumpPhases(tank);
  return 1 / (run.duration + rest.duration);
};

/** A setting between two at which the pump starts half as often, if there is one. */
function settingForHalf(tank: PumpedTank, low: number, high: number, withSetting: (setting: number) => PumpedTank): number | undefined {
  const half = startRate(tank) / 2;
  const excess = (setting: number): number => startRate(withSetting(setting)) / half - 1;
  if (low >= high || excess(low) * excess(high) > 0) return undefined;
  return bracketedRoot(excess, low, high, { tolerance }).value;
}

/** How to halve the starts of a pump that runs and rests: the cut-out raised, the cut-in lowered and the pre-charge with it, or another tank. */
export function halfTheStarts(tank: PumpedTank, lowestCutIn = lowest): HalfTheStarts {
  const { volume, preCharge, cutIn, cutOut, pump, demand } = tank;
  const surplus = (p: number): number => pump(p) - demand(p) - leastFlow;
  const most = surplus(highest) > 0 ? highest : keptBelow * bracketedRoot(surplus, cutOut, highest).value;
  const preChargeFor = (setting: number): number => (preCharge > cutIn ? usualPreCharge(setting) : Math.max(0, preCharge + setting - cutIn));
  const lower = settingForHalf(tank, Math.max(lowest, lowestCutIn), cutIn, (setting) => ({ ...tank, cutIn: setting, preCharge: preChargeFor(setting) }));
  return {
    tankVolume: 2 * volume,
    cutOut: settingForHalf(tank, cutOut, most, (setting) => ({ ...tank, cutOut: setting })),
    cutIn: lower,
    preCharge: lower === undefined ? undefined : preChargeFor(lower),
  };
}
