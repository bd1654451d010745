/** What is wrong in the rows of a file: the first of them in full, all of them counted. */
import { problemAt, type InputError } from '../calculation/problem.js';
import { inputError } from './refuse.js';

/** Of these a reading is lost: it counts as missing. */
type LostKind = 'unreadable' | 'bad-time' | 'too-few-cells' | 'too-many-cells' | 'quotes' | 'placeholder' | 'impossible';

/** With these the readings are kept as they stand. */
type KeptKind =
  | 'perhaps-placeholder' | 'duplicate-time' | 'time-backwards' | 'clock-back' | 'skipped-hour' | 'newest-first' | 'repeated-header'
  | 'fraction-as-percent' | 'percent-as-fraction' | 'fahrenheit-as-celsius' | 'celsius-as-fahrenheit';

export type ProblemKind = LostKind | KeptKind;

export interface LoggerProblem {
  readonly kind: ProblemKind;
  /** Line of the file, counted from 1; none where the whole column is meant. */
  readonly line?: number | undefined;
  /** Name of the column. */
  readonly column?: string | undefined;
  /** What is needed there. */
  readonly expected: string;
  /** What stands there. */
  readonly found: string;
  /** What to do. */
  readonly hint?: string | undefined;
}

/** As many problems are kept in full. */
export const mostProblems = 100;

type Counts = Partial<Record<ProblemKind, number>>;

export interface Problems {
  readonly first: LoggerProblem[];
  readonly counts: Counts;
  add(problem: LoggerProblem): void;
}

export const count = (counts: Counts, { kind }: LoggerProblem): void => {
  counts[kind] = (counts[kind] ?? 0) + 1;
};

export function problemList(): Problems {
  const first: LoggerProblem[] = [];
  const counts: Counts = {};
  return {
    first,
    counts,
    add(problem) {
      count(counts, problem);
      if (first.length < mostProblems) first.push(problem);
    },
  };
}

/** All of them as one error. */
export const problemsError = (problems: readonly LoggerProblem[]): InputError =>
  inputError(problems.map(({ line, column, expected, found, hint }) => {
    const keys = [...(line === undefined ? ['columns'] : ['lines', line]), ...(column === undefined ? [] : [column])];
    return problemAt(keys, { expected, received: found, hint });
  }));

/** A cell or line as it is quoted in a problem: short. */
export const shown = (text: string): string => JSON.stringify(text.length > 60 ? `${text.slice(0, 60)}…` : text);
