/** Vectors taken apart: vector k = Σ basis[i] · triangle[k][i], the basis of unit vectors at right angles. */
export interface OrthogonalBasis {
  readonly basis: (readonly number[])[];
  /** Of each vector, its parts along the basis up to its own. */
  readonly triangle: (readonly number[])[];
}

/** A vector as its parts along a basis and what is left at right angles to it. */
export interface SplitVector {
  readonly parts: readonly number[];
  readonly rest: readonly number[];
}

export function dot(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

/** The sum of vectors, each times its factor, on top of a first one. */
export function combined(first: readonly number[], vectors: readonly (readonly number[])[], factors: readonly number[]): number[] {
  const sum = [...first];
  vectors.forEach((vector, k) => {
    const factor = factors[k]!;
    for (let i = 0; i < sum.length; i++) sum[i]! += factor * vector[i]!;
  });
  return sum;
}

/**
 * Splits a vector by Gram and Schmidt, gone over twice so that the rest is at right angles to working precision.
 *
 * Source: Daniel, Gragg, Kaufman and Stewart 1976, Reorthogonalization and stable algorithms for updating the Gram-Schmidt QR factorization.
 */
export function split(vector: readonly number[], basis: readonly (readonly number[])[]): SplitVector {
  const parts = new Array<number>(basis.length).fill(0);
  const rest = [...vector];
  for (let pass = 0; pass < 2; pass++) {
    basis.forEach((direction, k) => {
      const part = dot(direction, rest);
      parts[k]! += part;
      for (let i = 0; i < rest.length; i++) rest[i]! -= part * direction[i]!;
    });
  }
  return { parts, rest };
}

/** Adds a vector, split before, to a basis. */
export function extend({ basis, triangle }: OrthogonalBasis, { parts, rest }: SplitVector): void {
  const length = Math.sqrt(dot(rest, rest));
  basis.push(rest.map((x) => x / length));
  triangle.push([...parts, length]);
}

/** The basis of vectors that do not depend on one another. */
export function basisOf(vectors: readonly (readonly number[])[]): OrthogonalBasis {
  const made: OrthogonalBasis = { basis: [], triangle: [] };
  for (const vector of vectors) extend(made, split(vector, made.basis));
  return made;
}

/** Factors by which the vectors add up to a vector of these parts. */
export function factorsOf({ triangle }: OrthogonalBasis, parts: readonly number[]): number[] {
  const factors = [...parts];
  for (let k = triangle.length - 1; k >= 0; k--) {
    const column = triangle[k]!;
    const factor = factors[k]! / column[k]!;
    factors[k] = factor;
    for (let i = 0; i < k; i++) factors[i]! -= factor * column[i]!;
  }
  return factors;
}

/** Parts of the vector whose products with the vectors are these. */
export function partsOf({ triangle }: OrthogonalBasis, products: readonly number[]): number[] {
  const parts: number[] = [];
  triangle.forEach((column, k) => {
    let left = products[k]!;
    for (let i = 0; i < k; i++) left -= column[i]! * parts[i]!;
    parts.push(left / column[k]!);
  });
  return parts;
}
