import { ConvergenceError } from './convergence-error.js';
import { solveLinear } from './linear-solve.js';

/** The answer to a system of equations, and how well it was found. */
export interface SystemSolution {
  readonly values: readonly number[];
  /** Largest |residual|, in the unit of the residuals. */
  readonly residual: number;
  /** Newton steps taken. */
  readonly steps: number;
}

/** How a system is to be solved. */
export interface NewtonOptions {
  /** Derivatives, a row an equation and a column an unknown; by forward differences where it is not given. */
  readonly jacobian?: (values: readonly number[]) => number[][];
  /** Largest |residual| that counts as solved. Scale the equations so that one number fits all; 1e-10 where it is not given. */
  readonly tolerance?: number;
  /** Most Newton steps before it is given up; 100 where it is not given. */
  readonly steps?: number;
  /** Furthest any unknown may move in one step; without limit where it is not given. */
  readonly largestStep?: number;
}

/**
 * A zero of a small system of equations by damped Newton steps.
 *
 * A full step is shortened to `largestStep`, then halved until the sum of squares falls. Throws ConvergenceError where no shorter step
 * helps, where the derivatives are singular, or after `steps`.
 *
 * Source: Dennis and Schnabel 1983, Numerical Methods for Unconstrained Optimization and Nonlinear Equations, chapter 6.
 *
 * @example newtonSystem(([x, y]) => [x * x + y * y - 4, x - y], [1, 2]).values // => [1.4142135624, 1.4142135624]
 */
export function newtonSystem(
  residuals: (values: readonly number[]) => number[],
  start: readonly number[],
  options: NewtonOptions = {},
): SystemSolution {
  const { jacobian = forwardDifferences(residuals), tolerance = 1e-10, steps: limit = 100, largestStep = Infinity } = options;
  let values = [...start];
  let errors = residuals(values);
  let size = sumOfSquares(errors);
  let steps = 0;
  const fail = (why: string): never => {
    throw new ConvergenceError(`${why}: largest residual ${largest(errors)} after ${steps} steps`, largest(errors), steps);
  };
  while (!(largest(errors) <= tolerance)) {
    if (steps === limit) fail('not solved');
    steps += 1;
    const step = fullStep();
    let factor = Math.min(1, largestStep / largest(step));
    for (let halvings = 0; ; halvings++) {
      const trial = values.map((value, i) => value + factor * step[i]!);
      const trialErrors = residuals(trial);
      const trialSize = sumOfSquares(trialErrors);
      if (trialSize < size) {
        [values, errors, size] = [trial, trialErrors, trialSize];
        break;
      }
      if (halvings === 50) fail('no shorter step helps');
      factor /= 2;
    }
  }
  return { values, residual: largest(errors), steps };

  function fullStep(): number[] {
    try {
      return solveLinear(jacobian(values), errors.map((error) => -error));
    } catch (error) {
      if (error instanceof RangeError) return fail(error.message);
      throw error;
    }
  }
}

function forwardDifferences(residuals: (values: readonly number[]) => number[]) {
  return (values: readonly number[]): number[][] => {
    const here = residuals(values);
    const columns = values.map((value, j) => {
      const moved = value + 1.5e-8 * Math.max(Math.abs(value), 1e-3);
      const there = residuals(values.map((other, k) => (k === j ? moved : other)));
      return there.map((error, i) => (error - here[i]!) / (moved - value));
    });
    return here.map((_, i) => columns.map((column) => column[i]!));
  };
}

function largest(numbers: readonly number[]): number {
  let most = 0;
  for (const number of numbers) most = Math.max(most, Math.abs(number));
  return most;
}

function sumOfSquares(numbers: readonly number[]): number {
  let sum = 0;
  for (const number of numbers) sum += number * number;
  return sum;
}
