/** How evenly a lateral gives, from its heads and flows. */
import {
  christiansenUniformityClogged, lowQuarterUniformityClogged, statisticalUniformityClogged,
} from './formulas/clogging.js';
import {
  flowVariationWuGitlin1974, lowQuarterUniformityWhole, statisticalUniformityOfPopulation, uniformityChristiansen1942,
} from './formulas/uniformity.js';
import type { SeenReach } from './lateral-fields.js';

/** Each flow as a share of what its emitter is said to give, where emitters differ: what is meant to differ is not uneven. */
export function flowsToCompare(flows: Float64Array, reaches: readonly Pick<SeenReach, 'outlets' | 'emitterFlow'>[]): Float64Array {
  const [{ emitterFlow: first }] = reaches as readonly [SeenReach];
  if (reaches.every(({ emitterFlow }) => emitterFlow === first)) return flows;
  const compared = new Float64Array(flows.length);
  let outlet = 0;
  for (const { outlets, emitterFlow } of reaches) for (let i = 0; i < outlets; i++, outlet++) compared[outlet] = flows[outlet]! / emitterFlow;
  return compared;
}

/** The measures of uniformity, with a share of the emitters clogged; the flow variation is that of those that run. With clogged ones the low quarter is exactly N/4, without N/4 rounded down. */
export function evennessOf(flows: Float64Array, cloggedShare: number) {
  const running = statisticalUniformityOfPopulation(flows);
  const clogged = cloggedShare > 0;
  return {
    flowVariation: flowVariationWuGitlin1974(flows),
    lowQuarterUniformity: clogged ? lowQuarterUniformityClogged(flows, cloggedShare) : lowQuarterUniformityWhole(flows),
    christiansenUniformity: clogged ? christiansenUniformityClogged(flows, cloggedShare) : uniformityChristiansen1942(flows),
    statisticalUniformity: clogged ? statisticalUniformityClogged(running, cloggedShare) : running,
  };
}
