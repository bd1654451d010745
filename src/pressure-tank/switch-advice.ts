import { bracketedRoot } from '../numerics/roots.js';
import { leastFlow, pumpPhases, type PumpedTank } from './formulas/pumped-tank.js';
import { rightPreCharge, usualPreCharge } from './tank.js';

/** Settings of which each alone would halve the starts of a pump; undefined where none does. */
export interface HalfTheStarts {
  readonly tankVolume: number;
  readonly cutOut: number | undefined;
  readonly cutIn: number | undefined;
  /** The pre-charge that goes with that cut-in. */
  readonly preCharge: number | undefined;
}

/** The band between cut-in and cut-out of most switches: 20 psi, Pa. Common practice, no source. */
export const usualBand = 137_895;

/** The lowest cut-in and pre-charge, and the highest cut-out, that are advised, Pa. */
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

/** The tank with its pre-charge set right, where it is not. */
export const setRight = (tank: PumpedTank): PumpedTank => ({ ...tank, preCharge: rightPreCharge(tank) });

/** Pressure, gauge, Pa, from which on a pump gives nothing; undefined where it gives something at the cut-out. */
export const shutOffBelowCutOut = ({ cutOut, pump }: PumpedTank): number | undefined =>
  pump(cutOut) > leastFlow ? undefined : bracketedRoot((p) => pump(p) - leastFlow, 0, cutOut, { tolerance }).value;

/** A switch that a pump reaches which gives nothing from a pressure on: a cut-out below that, and where it must be lowered too a cut-in with its pre-charge. */
export function switchBelow(shutOff: number, { cutIn }: PumpedTank): { readonly cutOut: number; readonly cutIn?: number; readonly preCharge?: number } | undefined {
  const cutOut = keptBelow * shutOff;
  const lower = cutOut - usualBand;
  if (cutIn <= lower) return { cutOut };
  return usualPreCharge(lower) < lowest ? undefined : { cutOut, cutIn: lower, preCharge: usualPreCharge(lower) };
}

/** How to halve the starts of a pump that runs and rests, its pre-charge being right: the cut-out raised, the cut-in lowered and the pre-charge with it, or another tank. */
export function halfTheStarts(tank: PumpedTank, lowestCutIn = 0): HalfTheStarts {
  const { volume, preCharge, cutIn, cutOut, pump, demand } = tank;
  const surplus = (p: number): number => pump(p) - demand(p) - leastFlow;
  const most = surplus(highest) > 0 ? highest : keptBelow * bracketedRoot(surplus, cutOut, highest).value;
  const preChargeFor = (setting: number): number => preCharge + setting - cutIn;
  const lower = settingForHalf(tank, Math.max(lowestCutIn, lowest + Math.max(0, cutIn - preCharge)), cutIn, (setting) => ({ ...tank, cutIn: setting, preCharge: preChargeFor(setting) }));
  return {
    tankVolume: 2 * volume,
    cutOut: settingForHalf(tank, cutOut, most, (setting) => ({ ...tank, cutOut: setting })),
    cutIn: lower,
    preCharge: lower === undefined ? undefined : preChargeFor(lower),
  };
}
