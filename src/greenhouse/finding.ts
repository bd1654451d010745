import { acid, backflow, discharge, lye, mainsElectricity, pressureVessel, pumpSuction } from '../calculation/caution.js';
import type { Note, Severity } from '../calculation/note.js';
import type { SourceKey } from '../sources.js';

/** Something to know or to change about a greenhouse, and what says so. */
export interface Finding {
  readonly severity: Severity;
  readonly code: string;
  /** What it concerns: a part of the description (`tank.preCharge`), or what comes of one (`zones[0].pump.runTime`). */
  readonly where: string;
  readonly text: string;
  /** The calculation that it comes from. */
  readonly calculation: string;
  /** Keys of the publications that the calculation rests on. */
  readonly sources: readonly SourceKey[];
}

/** What findings are taken from: the calculation by its id and sources. */
export interface Basis {
  readonly id: string;
  readonly sources: readonly SourceKey[];
}

/** What findings rest on that follow from the description itself. */
export const ownBasis: Basis = { id: 'assessGreenhouse', sources: ['definition'] };

/** A finding of our own about a part of the greenhouse. */
export const finding = ({ id, sources }: Basis, where: string, severity: Severity, code: string, text: string): Finding => ({
  severity, code, where, text, calculation: id, sources,
});

/** A place within a part of the greenhouse; either may be empty. */
export const within = (where: string, field = ''): string => [where, field].filter((part) => part !== '').join('.');

/** The notes of a result as findings about a part of the greenhouse. */
export const findingsOf = (basis: Basis, where: string, notes: readonly Note[]): readonly Finding[] =>
  notes.map(({ severity, code, field, text }) => finding(basis, within(where, field), severity, code, text));

/** Whether a finding is one of the cautions that go with the work whatever the numbers are. */
export const isStanding = ({ code }: Pick<Finding, 'code'>): boolean =>
  [acid, backflow, discharge, lye, mainsElectricity, pressureVessel, pumpSuction].some((caution) => caution.code === code);

const gravity: Readonly<Record<Severity, number>> = { danger: 0, caution: 1, info: 3 };
const rank = (one: Finding): number => (isStanding(one) ? 2 : gravity[one.severity]);

/**
 * Findings by severity, the gravest first and standing cautions after what can be mended. Each is said once: what several parts have
 * in common stands at the first of them.
 */
export function inOrder(findings: readonly Finding[]): readonly Finding[] {
  const said = new Set<string>();
  return findings
    .filter(({ code, text }) => {
      const words = `${code}: ${text}`;
      return !said.has(words) && said.add(words);
    })
    .sort((a, b) => rank(a) - rank(b));
}
