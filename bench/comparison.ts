/** One job done twice, by this library and by something else, and the ratio that has to hold between them. */
export interface Comparison {
  readonly name: string;
  readonly ours: Contender;
  readonly theirs: Contender;
  /** `atMost: 3`: ours may take three times as long as theirs. `atLeast: 20`: ours has to be twenty times as fast. None: the ratio is only shown. */
  readonly limit?: { readonly atMost: number } | { readonly atLeast: number };
  /** Longest that ours may take at the median, µs: a promise of its own beside the ratio. */
  readonly median?: number;
  /** What makes the two comparable; throws where their answers differ. */
  readonly agree: () => void;
}

export interface Contender {
  readonly name: string;
  readonly run: () => unknown;
}

/** A module of the built package, typed by its source. */
export const built = <Module>(entry: string): Promise<Module> => import(`../dist/${entry}/index.js`) as Promise<Module>;

/** Throws unless two numbers agree within a share. */
export function agreeWithin(share: number, ours: number, theirs: number): void {
  if (!(Math.abs(ours / theirs - 1) <= share)) throw new Error(`not the same job: ours ${ours}, theirs ${theirs}`);
}
