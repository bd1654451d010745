declare module 'quadprog' {
  /** Least ½ xᵀDx − dᵀx with Aᵀx ≥ b. Indices count from 1: what stands at 0 is ignored. */
  export function solveQP(D: number[][], d: number[], A: number[][], b: number[]): { readonly solution: readonly number[]; readonly message: string };
}
