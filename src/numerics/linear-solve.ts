/**
 * Solution of a square system of linear equations by elimination with partial pivoting. The arguments are left as they are.
 *
 * Good for small dense systems (tens of unknowns). A singular matrix throws a RangeError that names the column without a pivot.
 *
 * @example solveLinear([[2, 1], [1, 3]], [5, 10]) // => [1, 3]
 */
export function solveLinear(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const size = right.length;
  const rows = matrix.map((row, i) => [...row, right[i]!]);
  for (let column = 0; column < size; column++) {
    let best = column;
    for (let i = column + 1; i < size; i++) {
      if (Math.abs(rows[i]![column]!) > Math.abs(rows[best]![column]!)) best = i;
    }
    const pivotRow = rows[best]!;
    const pivot = pivotRow[column]!;
    if (!(Math.abs(pivot) > 0)) throw new RangeError(`the matrix is singular: no pivot in column ${column}`);
    rows[best] = rows[column]!;
    rows[column] = pivotRow;
    for (let i = column + 1; i < size; i++) {
      const row = rows[i]!;
      const factor = row[column]! / pivot;
      if (factor === 0) continue;
      for (let j = column + 1; j <= size; j++) row[j] = row[j]! - factor * pivotRow[j]!;
    }
  }
  const solution = new Array<number>(size);
  for (let i = size - 1; i >= 0; i--) {
    const row = rows[i]!;
    let sum = row[size]!;
    for (let j = i + 1; j < size; j++) sum -= row[j]! * solution[j]!;
    solution[i] = sum / row[i]!;
  }
  return solution;
}
