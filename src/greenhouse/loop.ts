/** The loop of the drain: how its ions go while the plants take up water, and when it must be let out. */
import type { WrittenFields } from '../calculation/field-types.js';
import * as output from '../calculation/output.js';
import { loopRun } from '../recirculation/index.js';
import type { Ion } from '../solution/index.js';
import type { Quantity } from '../units/quantity.js';
import type { Assessor } from './attempt.js';
import { litres, percent } from './measures.js';

/** The loop, what the plants take with their water, and by what it is let out. */
export function loopFields() {
  const { loopVolume, startingSolution, crop, uptakeConcentrations, uptakeFactors, ionLimits, caughtShare, conductivityPerCharge, strategy, days, floorArea } = loopRun.inputs;
  return { loopVolume, startingSolution, crop, uptakeConcentrations, uptakeFactors, ionLimits, caughtShare, conductivityPerCharge, strategy, days, floorArea };
}

/** What comes of it. */
export function loopOutputs() {
  const { times, concentrations, conductivities, dischargeEvents, dischargedVolume, nitrogenMass, phosphorusMass, nitrogenPerArea, phosphorusPerArea, limitTimes, daysAboveLimit, highestConductivity } = loopRun.outputs;
  return output.optional(output.group(output.passedOn({ times, concentrations, conductivities, dischargeEvents, dischargedVolume, nitrogenMass, phosphorusMass, nitrogenPerArea, phosphorusPerArea, limitTimes, daysAboveLimit, highestConductivity })));
}

type DescribedLoop = WrittenFields<ReturnType<typeof loopFields>>;

/** What goes round: the feed as it is mixed, and of what is given in a day, the volume taken up and that in all, m³. */
interface Round {
  readonly ions: { readonly [I in Ion]?: Quantity<'amountConcentration'> };
  readonly taken: number;
  readonly given: number;
}

/** A season of the loop, refilled with the feed. */
export const assessLoop = (loop: DescribedLoop, { ions, taken, given }: Round, { run }: Assessor) =>
  run(loopRun, 'loop', { ...loop, freshFeed: { ions }, dailyWaterUse: litres(taken), drainShare: percent(Math.min(mostDrain, Math.max(0, 1 - taken / given))) });

/** More drain than this no loop is reckoned with. */
const mostDrain = 0.9;
