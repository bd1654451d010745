/** Of a list of misses: their mean, their mean size, the largest, and the size that nine in ten stay within. */
export function statisticsOf(misses: readonly number[]) {
  const sizes = misses.map(Math.abs).sort((a, b) => a - b);
  const mean = (numbers: readonly number[]): number => numbers.reduce((sum, one) => sum + one, 0) / numbers.length;
  return { count: misses.length, mean: mean(misses), meanSize: mean(sizes), worst: sizes.at(-1)!, nineInTen: sizes[Math.ceil(0.9 * sizes.length) - 1]! };
}
