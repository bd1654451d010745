import type { Calculation, ResultOf } from '../calculation/calculation.js';
import type { Fields, WrittenFields } from '../calculation/field-types.js';
import type { Outputs } from '../calculation/output.js';
import { isInputError, needText } from '../calculation/problem.js';
import { finding, findingsOf, within, type Finding } from './finding.js';

type Run = <F extends Fields, O extends Outputs>(calculation: Calculation<F, O>, where: string, input: WrittenFields<F>) => ResultOf<O> | undefined;

/** Runs calculations for parts of the greenhouse and keeps what they have to say. */
export interface Assessor {
  /** The result of a calculation, or undefined where it has none: then a finding says why. */
  readonly run: Run;
  /** The same, but of a result it keeps nothing that there is to say. */
  readonly runQuietly: Run;
  readonly add: (...findings: readonly Finding[]) => void;
  readonly findings: readonly Finding[];
}

/** An assessor that has found nothing yet. */
export function newAssessor(): Assessor {
  const findings: Finding[] = [];
  const runQuietly: Run = (calculation, where, input) => {
    const attempt = calculation.try(input);
    if (attempt.ok) return attempt.value;
    const { error } = attempt;
    const reasons = isInputError(error) ? error.problems.map((problem) => [problem.path, needText(problem)] as const) : [['', error.message] as const];
    findings.push(...reasons.map(([path, reason]) => finding(calculation, within(where, path), 'danger', 'no-result', `No result: ${reason}.`)));
    return undefined;
  };
  return {
    findings,
    add: (...more) => void findings.push(...more),
    runQuietly,
    run: (calculation, where, input) => {
      const result = runQuietly(calculation, where, input);
      if (result) findings.push(...findingsOf(calculation, where, result.notes));
      return result;
    },
  };
}
