import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { pressure } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { checkDesign, described, designFields, designOutputs, keeps, trying, type Trial } from './design.js';
import { checkConnection } from './lateral-fields.js';
import { checkRoughness, diameter } from './pipe.js';

/** Pressures that are tried, Pa, in equal ratios; between two of them the limit is then found. */
const [lowestTried, highestTried, tries] = [1e3, 1e6, 120];

/** Ratio to which the pressure is found. */
const fineness = 1e-6;

/**
 * Pressure at the inlet from which, and up to which, a drip lateral gives evenly enough.
 *
 * Takes what `lateral` takes of one reach, the number of outlets (1 to 10 000), and how evenly it is to give: the greatest flow variation or the least design
 * emission uniformity, one of the two. Uphill, and with compensating emitters, there is a lowest pressure; where friction grows faster with pressure than
 * emitters even it out (laminar ones), or compensating emitters end, also a highest. Looks in 120 equal ratios from 1 kPa, or from where
 * compensating emitters open, to 1 MPa, and gives the first range found, with what the lateral does at its lowest pressure; no highest where it goes on to 1 MPa.
 * @throws InputError for input outside these limits, where not exactly one of the two measures is given, and where no pressure keeps the limit.
 * @example
 * const row = inletPressureForUniformity({ outlets: 40, spacing: '25 cm', diameter: '13.6 mm', slope: '5 %', emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.5, mostFlowVariation: 0.1 });
 * row.inletPressure.in('kPa') // => 25.56
 */
export const inletPressureForUniformity = /* @__PURE__ */ calculation({
  id: 'inletPressureForUniformity',
  title: 'Inlet pressure of a drip lateral for a limit of unevenness',
  inputs: () => ({ ...designFields(), outlets: field.count({ limits: [1, 10_000] }), diameter: diameter() }),
  outputs: () => ({
    inletPressure: output.quantity(pressure, 'kPa'),
    highestInletPressure: output.optional(output.quantity(pressure, 'kPa')),
    ...designOutputs(),
  }),
  equation: 'the least and the greatest p for which (q_max − q_min)/q_max, or EU, of the lateral computed outlet by outlet keeps the limit',
  sources: ['wu-gitlin-1974', 'keller-karmeli-1974', 'clamond-2009', 'iapws-sr6-08'],
  example: { outlets: 40, spacing: '25 cm', diameter: '13.6 mm', slope: '5 %', emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.5, mostFlowVariation: 0.1 },
  check: (seen, problem) => {
    checkDesign(seen, problem);
    checkRoughness(seen, problem);
    checkConnection(seen, [], problem);
  },
  solve: (seen, solving) => {
    const attempt = (at: number) => trying(seen, at);
    const lowest = seen.compensation?.openingPressure ?? lowestTried;
    const ratio = (highestTried / lowest) ** (1 / tries);
    const grid = Array.from({ length: tries + 1 }, (_, i) => Math.min(highestTried, lowest * ratio ** i));
    const trials = grid.map(attempt);
    const first = trials.findIndex(keeps);
    if (first < 0) {
      const least = Math.min(...trials.map((trial) => trial?.unevenness ?? Infinity));
      return solving.refuse(seen.mostFlowVariation === undefined ? 'leastEmissionUniformity' : 'mostFlowVariation', 'a limit that this lateral keeps at some pressure', least < Infinity ? `one that it is at best ${writeNumber(least)} times as uneven as` : 'one for a lateral some of whose emitters get nothing at any pressure', 'take a larger pipe, a shorter lateral or compensating emitters');
    }
    const beyond = trials.findIndex((trial, i) => i > first && !keeps(trial));
    const [inletPressure, trial] = first === 0 ? [grid[0]!, trials[0]!] : boundary(attempt, grid[first]!, trials[first]!, grid[first - 1]!);
    const highestInletPressure = beyond < 0 ? undefined : boundary(attempt, grid[beyond - 1]!, trials[beyond - 1]!, grid[beyond]!)[0];
    if (first === 0 && !seen.compensation) solving.note('info', 'lowest-tried', 'inletPressure', `Pressures below ${lowestTried / 1000} kPa are not tried, and this one keeps the limit already: let the flow that the plants need say the pressure.`);
    return { inletPressure, highestInletPressure, ...described(trial, seen, solving) };
  },
});

/** The last pressure that keeps the limit on the way from one that does to one that does not. */
function boundary(attempt: (at: number) => Trial | undefined, keeping: number, trial: Trial, breaking: number): readonly [at: number, trial: Trial] {
  let [good, kept, bad] = [keeping, trial, breaking];
  while (Math.abs(good / bad - 1) > fineness) {
    const middle = Math.sqrt(good * bad);
    const found = attempt(middle);
    if (keeps(found)) [good, kept] = [middle, found!];
    else bad = middle;
  }
  return [good, kept];
}
