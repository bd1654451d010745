import type { EmitterLaw } from '../../laterals/formulas/emitter.js';

/** In so much head, m, above the one that they open at, the flow of emitters is taken to grow in proportion: no law has a step there, or an endless slope. */
const rampHead = 1e-3;

/** Emitters that do not open up to here, m, are taken never to. */
const highestOpening = 1000;

/** The highest head that nothing flows at, to a thousandth of the ramp: 0, but for emitters that close before it does. */
function openingHead({ flow }: EmitterLaw): number {
  if (flow(rampHead) > 0) return 0;
  let [low, high] = [0, highestOpening];
  while (high - low > rampHead / 1000) {
    const middle = (low + high) / 2;
    if (flow(middle) > 0) high = middle;
    else low = middle;
  }
  return low;
}

/** Head that emitters are usually given above the one that they open at, m. */
export const usualHead = 10;

/** Emitters as a search for heads takes them. */
export interface EmittersLaw extends EmitterLaw {
  /** Highest head that nothing flows at. */
  readonly opening: number;
  /** Flow at the head that they are usually given. */
  readonly usualFlow: number;
  /** Head over flow by which the two are weighed against each other. */
  readonly weight: number;
}

/** Emitters of several kinds at one place. */
export function allTogether(laws: readonly EmittersLaw[]): EmittersLaw {
  const [first, ...others] = laws;
  if (others.length === 0) return first!;
  const usualFlow = laws.reduce((sum, one) => sum + one.usualFlow, 0);
  return {
    usualFlow,
    opening: Math.min(...laws.map(({ opening }) => opening)),
    weight: usualHead / usualFlow,
    flow: (head) => laws.reduce((sum, { flow }) => sum + flow(head), 0),
    slope: (head) => laws.reduce((sum, { slope }) => sum + slope(head), 0),
  };
}

/** So many emitters of a kind together, with the flow in proportion to the head in the first millimetre above their opening. */
export function emittersTogether(law: EmitterLaw, count: number): EmittersLaw {
  const opening = openingHead(law);
  const opened = opening + rampHead;
  const ramp = (count * law.flow(opened)) / rampHead;
  const of = (head: number, ofRamp: (above: number) => number, ofLaw: (head: number) => number): number =>
    head <= opening ? 0 : head < opened ? ofRamp(head - opening) : count * ofLaw(head);
  const usualFlow = count * law.flow(opening + usualHead);
  return {
    opening, usualFlow,
    weight: usualHead / usualFlow,
    flow: (head) => of(head, (above) => ramp * above, law.flow),
    slope: (head) => of(head, () => ramp, law.slope),
  };
}
