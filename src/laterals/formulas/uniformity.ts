/** Mean of some values. */
export function mean(values: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]!;
  return sum / values.length;
}

/** Standard deviation over the mean; `freedom` is what is taken from the count: 0 for a whole population, 1 for a sample of it. */
function coefficientOfVariation(values: ArrayLike<number>, freedom: 0 | 1): number {
  const middle = mean(values);
  let squares = 0;
  for (let i = 0; i < values.length; i++) squares += (values[i]! - middle) ** 2;
  return Math.sqrt(squares / (values.length - freedom)) / middle;
}

/** The values from the lowest to the highest. Those along a lateral mostly fall or rise all the way, and need no sorting. */
function ascending(values: ArrayLike<number>): Float64Array {
  const sorted = new Float64Array(values);
  let falls = 0;
  for (let i = 1; i < sorted.length; i++) if (sorted[i]! < sorted[i - 1]!) falls++;
  if (falls === 0) return sorted;
  return falls === sorted.length - 1 ? sorted.reverse() : sorted.sort();
}

/** Mean of the lowest `count` values over the mean of all; the last one is taken in part where `count` is not whole. */
export function lowestOverMean(values: ArrayLike<number>, count: number): number {
  const sorted = ascending(values);
  const whole = Math.floor(count);
  let sum = 0;
  for (let i = 0; i < whole; i++) sum += sorted[i]!;
  if (count > whole) sum += (count - whole) * sorted[whole]!;
  return sum / count / mean(values);
}

/**
 * Emission uniformity for design: EU = (1 - 1.27 Cv/sqrt(n)) qn/qa.
 *
 * Joins what the maker and what the pipe spread: 1.27 Cv is the low quarter of a normal spread. Source: Keller & Karmeli (1974).
 *
 * @param manufacturingVariation Cv, standard deviation over mean of new emitters at one pressure
 * @param emittersPerPlant n
 * @param minimumFlow qn, of the emitter with the lowest pressure, m3/s
 * @param meanFlow qa, m3/s
 * @returns fraction
 * @example designUniformityKellerKarmeli1974(0.07, 2, 3.8, 4) // => 0.890281
 */
export function designUniformityKellerKarmeli1974(
  manufacturingVariation: number, emittersPerPlant: number, minimumFlow: number, meanFlow: number,
): number {
  return (1 - (1.27 * manufacturingVariation) / Math.sqrt(emittersPerPlant)) * (minimumFlow / meanFlow);
}

/**
 * Low-quarter distribution uniformity: mean of the lowest quarter over the mean of all. The quarter is a whole number of emitters,
 * N/4 rounded down, at least one.
 *
 * @returns fraction
 */
export function lowQuarterUniformityWhole(flows: ArrayLike<number>): number {
  return lowestOverMean(flows, Math.max(1, Math.floor(flows.length / 4)));
}

/** Low-quarter distribution uniformity with a quarter of exactly N/4 emitters: the last of them counts by its part. Fraction. */
export function lowQuarterUniformityWeighted(flows: ArrayLike<number>): number {
  return lowestOverMean(flows, flows.length / 4);
}

/**
 * Christiansen's coefficient of uniformity: CU = 1 - sum(|q - qm|)/(N qm). Source: Christiansen (1942), from memory.
 *
 * @returns fraction; below 0 for very uneven flows
 */
export function uniformityChristiansen1942(flows: ArrayLike<number>): number {
  const middle = mean(flows);
  let away = 0;
  for (let i = 0; i < flows.length; i++) away += Math.abs(flows[i]! - middle);
  return 1 - away / (flows.length * middle);
}

/** Statistical uniformity 1 - s/qm over all emitters there are (s divides by N). Fraction. */
export function statisticalUniformityOfPopulation(flows: ArrayLike<number>): number {
  return 1 - coefficientOfVariation(flows, 0);
}

/** Statistical uniformity 1 - s/qm estimated from measured emitters (s divides by N - 1); two at least. Fraction. */
export function statisticalUniformityOfSample(flows: ArrayLike<number>): number {
  return 1 - coefficientOfVariation(flows, 1);
}

/** Lowest and highest of some values. */
export function lowestAndHighest(values: ArrayLike<number>): readonly [lowest: number, highest: number] {
  let lowest = Infinity;
  let highest = -Infinity;
  for (let i = 0; i < values.length; i++) {
    const value = values[i]!;
    if (value < lowest) lowest = value;
    if (value > highest) highest = value;
  }
  return [lowest, highest];
}

/** Flow variation along a lateral: (qmax - qmin)/qmax. Source: Wu & Gitlin (1974), from memory. Fraction. */
export function flowVariationWuGitlin1974(flows: ArrayLike<number>): number {
  const [lowest, highest] = lowestAndHighest(flows);
  return (highest - lowest) / highest;
}
