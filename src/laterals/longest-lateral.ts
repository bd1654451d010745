import { calculation } from '../calculation/calculation.js';
import * as output from '../calculation/output.js';
import { checkConnection } from './lateral-fields.js';
import { checkDesign, described, designFields, designOutputs, inletPressure, keeps, trying, type SeenDesign, type Trial } from './design.js';
import { checkRoughness, diameter } from './pipe.js';

/** Longer laterals are not tried. */
const mostTried = 10_000;

/**
 * Most emitters, and so the longest pipe, that one drip lateral can feed evenly enough.
 *
 * Takes what `lateral` takes of one reach, without its outlets, the pressure at the inlet, and how evenly it is to give: the greatest flow variation or the
 * least design emission uniformity (for which the manufacturing variation and the emitters of a plant count), one of the two. Gives the outlets, the
 * length, and what the lateral then does: it keeps the limit, and one with one outlet more does not. Stops at 10 000 outlets. Downhill the flow can
 * become even again in a much longer lateral, which is not looked for.
 * @throws InputError for input outside these limits, where not exactly one of the two measures is given, where water does not reach even a
 * single emitter, and where that one does not keep the limit.
 * @example
 * const row = longestLateral({ spacing: '25 cm', diameter: '13.6 mm', emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.5, inletPressure: '1 bar', mostFlowVariation: 0.1 });
 * row.outlets // => 251
 */
export const longestLateral = /* @__PURE__ */ calculation({
  id: 'longestLateral',
  title: 'Longest drip lateral for a limit of unevenness',
  inputs: () => ({ ...designFields(), diameter: diameter(), inletPressure: inletPressure() }),
  outputs: () => ({ outlets: output.number(), ...designOutputs() }),
  equation: 'the greatest N for which (q_max − q_min)/q_max, or EU, of the lateral computed outlet by outlet keeps the limit',
  sources: ['wu-gitlin-1974', 'keller-karmeli-1974', 'clamond-2009', 'iapws-sr6-08'],
  example: { spacing: '25 cm', diameter: '13.6 mm', emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.5, inletPressure: '1 bar', mostFlowVariation: 0.1 },
  check: (seen, problem) => {
    checkDesign(seen, problem);
    checkRoughness(seen, problem);
    checkConnection(seen, [], problem);
  },
  solve: (seen, solving) => {
    const { inletPressure, mostFlowVariation } = seen;
    const withOutlets = (outlets: number): SeenDesign => ({ ...seen, outlets });
    const attempt = (outlets: number) => trying(withOutlets(outlets), inletPressure);
    const single = attempt(1);
    if (!single) return solving.refuse('inletPressure', 'enough pressure to reach an emitter', 'too little for a single one', 'is the slope too steep, or the first spacing too long?');
    if (!keeps(single)) return solving.refuse(mostFlowVariation === undefined ? 'leastEmissionUniformity' : 'mostFlowVariation', 'what emitters of this manufacturing variation can keep', 'more than a single one keeps', 'take better emitters, or more of them to a plant');
    const [outlets, trial] = lastKept(attempt, single);
    if (outlets === mostTried) solving.note('info', 'longest-tried', 'outlets', `Longer laterals than of ${mostTried} outlets are not tried.`);
    return { outlets, ...described(trial, withOutlets(outlets), solving) };
  },
});

/** Doubles the outlets while they keep the limit, and closes in on the last that do: unevenness grows about with a power of their number. */
function lastKept(attempt: (outlets: number) => Trial | undefined, single: Trial): readonly [outlets: number, trial: Trial] {
  let [low, kept]: readonly [number, Trial] = [1, single];
  let [high, broken]: readonly [number, Trial | undefined] = [2, attempt(2)];
  while (keeps(broken)) {
    [low, kept] = [high, broken!];
    if (low === mostTried) return [low, kept];
    high = Math.min(2 * high, mostTried);
    broken = attempt(high);
  }
  for (let turn = 0; high - low > 1; turn++) {
    const power = broken && kept.unevenness > 0 ? Math.log(high / low) / Math.log(broken.unevenness / kept.unevenness) : NaN;
    const likely = Math.round(low * kept.unevenness ** -power);
    const middle = turn % 3 < 2 && likely > low && likely < high ? likely : (low + high) >> 1;
    const trial = attempt(middle);
    if (keeps(trial)) [low, kept] = [middle, trial!];
    else [high, broken] = [middle, trial];
  }
  return [low, kept];
}
