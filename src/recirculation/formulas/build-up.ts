/**
 * What comes into a loop and leaves it of one ion, for every volume of water that the plants take up. The loop is one mixed volume that is refilled
 * at once.
 */
export interface IonExchange {
  /** CI, concentration of the refill, mol/m3. */
  readonly refill: number;
  /** CU, taken up with a volume of water whatever the loop holds, mol/m3. */
  readonly uptake: number;
  /** p, taken up with a volume of water as a share of what the same volume of the loop holds. */
  readonly uptakeFactor: number;
  /** b, volume let out of the loop for each volume taken up; it is refilled too. */
  readonly bleed: number;
}

/** s, what a volume taken up changes of an empty loop, mol/m3. */
const netSupply = ({ refill, uptake, bleed }: IonExchange): number => refill * (1 + bleed) - uptake;

/** k, share of the concentration that a loop volume taken up removes. */
const removal = ({ uptakeFactor, bleed }: IonExchange): number => uptakeFactor + bleed;

/** Loop volumes taken up until an ion is used up; infinite where it never is. */
const turnoverUntilEmpty = (exchange: IonExchange, initial: number): number => (netSupply(exchange) >= 0 ? Infinity : turnoverUntil(exchange, initial, 0));

/** What a loop takes in, gives to the plants and lets out of an ion, mol for each m3 of the loop, and the concentration that it ends with. */
export interface LoopStep {
  readonly final: number;
  readonly supplied: number;
  readonly takenUp: number;
  readonly discharged: number;
  /** Loop volumes taken up, of this step, after which the plants got no more than what came in; infinite where they always got theirs. */
  readonly shortFrom: number;
}

/**
 * One step of a loop, as long as it may be: V dC/dW = CI (1 + b) − CU − (p + b) C, solved exactly.
 *
 * With s = CI (1 + b) − CU, k = p + b and W/V loop volumes taken up: C = C0 e^(−k W/V) + (s/k)(1 − e^(−k W/V)), or C0 + s W/V where k = 0. Where the
 * plants would take more than there is, the loop stays at zero and they get what comes in.
 *
 * @param initial C0, mol/m3
 * @param turnover W/V, from 0 on
 */
export function loopStep(exchange: IonExchange, initial: number, turnover: number): LoopStep {
  const shortFrom = turnoverUntilEmpty(exchange, initial);
  const fed = Math.min(turnover, shortFrom);
  const { kept, gained, passedOfInitial, passedOfGained } = stepCourse(exchange, fed);
  const { refill, uptake, uptakeFactor, bleed } = exchange;
  const passed = passedOfInitial * initial + passedOfGained;
  return {
    final: shortFrom <= turnover ? 0 : Math.max(0, kept * initial + gained),
    supplied: refill * (1 + bleed) * turnover,
    takenUp: uptake * fed + uptakeFactor * passed + refill * (1 + bleed) * (turnover - fed),
    discharged: bleed * passed,
    shortFrom,
  };
}

/** What a step does whatever it begins with, as long as there is enough: C = kept C0 + gained, and ∫ C dW/V = passedOfInitial C0 + passedOfGained. */
export interface StepCourse {
  readonly kept: number;
  readonly gained: number;
  readonly passedOfInitial: number;
  readonly passedOfGained: number;
}

/** The course of a step over some loop volumes taken up. */
export function stepCourse(exchange: IonExchange, turnover: number): StepCourse {
  const s = netSupply(exchange);
  const x = removal(exchange) * turnover;
  const decay = Math.expm1(-x);
  const meanKept = x === 0 ? 1 : -decay / x;
  // Half of the rise, by its series where the terms would cancel.
  const meanRise = x < 0.02 ? 1 / 2 - (x / 6) * (1 - (x / 4) * (1 - (x / 5) * (1 - (x / 6) * (1 - x / 7)))) : (x + decay) / (x * x);
  return { kept: 1 + decay, gained: s * turnover * meanKept, passedOfInitial: turnover * meanKept, passedOfGained: s * turnover * turnover * meanRise };
}

/**
 * Concentration of an ion in a loop after some loop volumes were taken up, mol/m3: linear where the plants take up the same with every litre,
 * levelling off where they take up in proportion to what the loop holds.
 *
 * Described for K, Ca, Mg (linear) and Na (levelling off) of tomato on stone wool. Exact for the equation of `loopStep`, for any turnover.
 *
 * Source: Carmassi et al. 2003 and 2005, where the models are described; the closed form with both kinds of uptake and a bleed follows from the balance.
 *
 * @example loopConcentration({ refill: 1.5, uptake: 0, uptakeFactor: 0.18, bleed: 0 }, 1.5, 5) // => 5.55511
 */
export function loopConcentration(exchange: IonExchange, initial: number, turnover: number): number {
  return loopStep(exchange, initial, turnover).final;
}

/**
 * Concentration that an ion of a loop comes to in the end, mol/m3: s/k, and never below zero. Infinite where it rises for ever; where nothing changes it,
 * what it begins with.
 *
 * @example steadyConcentration({ refill: 0.9, uptake: 0, uptakeFactor: 0.18, bleed: 0 }, 0.9) // => 5
 */
export function steadyConcentration(exchange: IonExchange, initial: number): number {
  const s = netSupply(exchange);
  const k = removal(exchange);
  if (k === 0 && s === 0) return initial;
  return s <= 0 ? 0 : s / k;
}

/**
 * Loop volumes taken up until an ion comes to a concentration, from above or below; infinite where it never does.
 *
 * W/V = −ln[(C − s/k)/(C0 − s/k)]/k, or (C − C0)/s where k = 0.
 *
 * @param limit C, mol/m3
 * @example turnoverUntil({ refill: 1, uptake: 0, uptakeFactor: 0.1, bleed: 0 }, 1, 6) // => 8.1093
 */
export function turnoverUntil(exchange: IonExchange, initial: number, limit: number): number {
  if (limit === initial) return 0;
  const [s, k] = [netSupply(exchange), removal(exchange)];
  const slope = s - k * initial;
  const linear = (limit - initial) / slope;
  if (!(linear >= 0 && linear < Infinity)) return Infinity;
  const done = k * linear;
  if (done < 1e-9) return linear * (1 + done / 2);
  if (done < 0.5) return -Math.log1p(-done) / k;
  const left = (s - k * limit) / slope;
  return left > 0 ? -Math.log(left) / k : Infinity;
}
