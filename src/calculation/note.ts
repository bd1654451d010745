/** How much a finding matters: to know, to act on, or not to go on. */
export type Severity = 'info' | 'caution' | 'danger';

/** Something that a result has to say beside its numbers. */
export interface Note {
  /** Stable name of the finding, for programs. */
  readonly code: string;
  readonly severity: Severity;
  /** The input or output that it concerns, where there is one. */
  readonly field?: string;
  /** One sentence in plain words. */
  readonly text: string;
}

/** Adds a finding to the result being worked out. */
export type AddNote = (severity: Severity, code: string, field: string | undefined, text: string) => void;
