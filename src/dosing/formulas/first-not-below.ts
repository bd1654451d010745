/** Index of the first of values that never fall which is not below x; how many values there are where none is. */
export function firstNotBelow(values: ArrayLike<number>, x: number): number {
  let [low, high] = [0, values.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (values[middle]! < x) low = middle + 1;
    else high = middle;
  }
  return low;
}
