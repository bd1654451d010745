/** An iteration that did not reach its answer: what was asked, how far it came, after how many steps. */
export class ConvergenceError extends Error {
  override readonly name = 'ConvergenceError';

  constructor(
    message: string,
    /** Size of what should have been zero when the iteration stopped, in its own unit. */
    readonly residual: number,
    /** Steps taken before it stopped. */
    readonly steps: number,
  ) {
    super(message);
  }
}
