import type { WrittenFields } from '../calculation/field-types.js';
import * as output from '../calculation/output.js';
import { solutionConductivity } from '../conductivity/index.js';
import { weighOut } from '../salts/index.js';
import type { Assessor } from './attempt.js';

/** What there is to know of the feed: what to weigh in, what comes of it, what the meter should show. */
export function feedOutputs() {
  const { portions, misfits, unavailable, exceededByWater, alkalinity } = weighOut.outputs;
  const { conductivity, conductivityAtReference, conductivityUncertainty } = solutionConductivity.outputs;
  return output.group({
    ...output.passedOn({ portions, misfits, unavailable, exceededByWater, alkalinity }),
    meter: output.optional(output.group(output.passedOn({ conductivity, conductivityAtReference, conductivityUncertainty }))),
  });
}

type WeighOutInput = WrittenFields<typeof weighOut.inputs>;
type Temperature = WrittenFields<typeof solutionConductivity.inputs>['waterTemperature'];

/** The feed sheet for the barrel, and the reading to confirm it with. */
export function assessFeed(input: WeighOutInput, waterTemperature: Temperature, { run }: Assessor) {
  const sheet = run(weighOut, '', input);
  if (!sheet) return undefined;
  const { portions, misfits, unavailable, exceededByWater, alkalinity, ions } = sheet;
  return { portions, misfits, unavailable, exceededByWater, alkalinity, meter: run(solutionConductivity, 'barrel', { ions, waterTemperature }) };
}
