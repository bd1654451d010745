import { bracketedRoot } from '../../numerics/roots.js';

/** How near, as a share of it, a root is sought: next to what pieces of pipe leave, nothing. */
const precision = 1e-6;

/** First step away from the guess, as a share of it; each further one is the square of the one before. */
const firstStep = 0.02;

/** Steps down from a guess by more than this share of it lead to the least there is. */
const farBelow = 1e-3;

/** Where a growing function is none, from `least` to `most`: sought from a guess in longer and longer steps. Throws ConvergenceError where it is not between them. */
export function rootNear(f: (x: number) => number, guess: number, least: number, most = Infinity): number {
  let near = guess;
  let atNear = f(near);
  const grows = atNear < 0;
  let far = near;
  let atFar = atNear;
  for (let factor = 1 + firstStep; atFar < 0 === grows && far !== (grows ? most : least); factor *= factor) {
    near = far;
    atNear = atFar;
    far = grows ? Math.min(far * factor, most) : far / factor > farBelow * guess ? far / factor : least;
    atFar = f(far);
  }
  const known = (x: number): number => (x === near ? atNear : x === far ? atFar : f(x));
  return bracketedRoot(known, near, far, { tolerance: precision * guess }).value;
}
