import type { SourceKey } from '../sources.js';

/** What a uniformity or a variation between two fractions is called. */
export interface UniformityClass {
  readonly measure: 'low-quarter uniformity' | 'statistical uniformity' | 'flow variation' | 'manufacturing variation of point sources' | 'manufacturing variation of line sources';
  /** From this fraction on. */
  readonly from: number;
  /** Up to, but not including, this fraction. */
  readonly below: number;
  readonly called: string;
  readonly source: SourceKey;
}

/** Customary classes, all from memory: pass your own table where the standard in force matters. Between rows nothing is said. */
export const uniformityClasses: readonly UniformityClass[] = [
  { measure: 'low-quarter uniformity', from: 0.9, below: Infinity, called: 'excellent', source: 'merriam-keller-1978' },
  { measure: 'low-quarter uniformity', from: 0.8, below: 0.9, called: 'good', source: 'merriam-keller-1978' },
  { measure: 'low-quarter uniformity', from: 0.7, below: 0.8, called: 'fair', source: 'merriam-keller-1978' },
  { measure: 'low-quarter uniformity', from: -Infinity, below: 0.7, called: 'poor', source: 'merriam-keller-1978' },
  { measure: 'statistical uniformity', from: 0.95, below: Infinity, called: 'excellent', source: 'asae-ep458' },
  { measure: 'statistical uniformity', from: 0.85, below: 0.9, called: 'good', source: 'asae-ep458' },
  { measure: 'statistical uniformity', from: 0.75, below: 0.8, called: 'fair', source: 'asae-ep458' },
  { measure: 'statistical uniformity', from: 0.65, below: 0.7, called: 'poor', source: 'asae-ep458' },
  { measure: 'statistical uniformity', from: -Infinity, below: 0.6, called: 'unacceptable', source: 'asae-ep458' },
  { measure: 'flow variation', from: 0, below: 0.1, called: 'good', source: 'wu-gitlin-1974' },
  { measure: 'flow variation', from: 0.1, below: 0.2, called: 'acceptable', source: 'wu-gitlin-1974' },
  { measure: 'flow variation', from: 0.2, below: Infinity, called: 'not acceptable', source: 'wu-gitlin-1974' },
  { measure: 'manufacturing variation of point sources', from: 0, below: 0.05, called: 'excellent', source: 'asae-ep405' },
  { measure: 'manufacturing variation of point sources', from: 0.05, below: 0.07, called: 'average', source: 'asae-ep405' },
  { measure: 'manufacturing variation of point sources', from: 0.07, below: 0.11, called: 'marginal', source: 'asae-ep405' },
  { measure: 'manufacturing variation of point sources', from: 0.11, below: 0.15, called: 'poor', source: 'asae-ep405' },
  { measure: 'manufacturing variation of point sources', from: 0.15, below: Infinity, called: 'unacceptable', source: 'asae-ep405' },
  { measure: 'manufacturing variation of line sources', from: 0, below: 0.1, called: 'good', source: 'asae-ep405' },
  { measure: 'manufacturing variation of line sources', from: 0.1, below: 0.2, called: 'average', source: 'asae-ep405' },
  { measure: 'manufacturing variation of line sources', from: 0.2, below: Infinity, called: 'marginal to unacceptable', source: 'asae-ep405' },
];

/** The class of a fraction, or undefined where the table says nothing. */
export function uniformityClass(
  measure: UniformityClass['measure'], fraction: number, classes: readonly UniformityClass[] = uniformityClasses,
): UniformityClass | undefined {
  return classes.find((row) => row.measure === measure && fraction >= row.from && fraction < row.below);
}
