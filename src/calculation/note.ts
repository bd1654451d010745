/** How much a finding matters: to know, to act on, or not to go on. */
export type Severity = 'info' | 'caution' | 'danger';

/** Something that a result has to say beside its numbers. */
export interface Note {
  /** Stable name of the finding, for programs. */
  readonly code: string;
  readonly severity: Severity;
  /** The input or output that it concerns, where there is one. */
  readonly field?: string | undefined;
  /** One sentence in plain words. */
  readonly text: string;
}

/** The finding that a value lies outside the range that the formulas behind a result were made for. */
export const outsideRange = (field: string, from: unknown, to: unknown): Note => ({
  code: 'outside-range', severity: 'caution', field,
  text: `${field} is outside ${String(from)} to ${String(to)}, where the formulas hold: take the result with care.`,
});

/** Adds a finding to the result being worked out. */
export type AddNote = (severity: Severity, code: string, field: string | undefined, text: string) => void;
