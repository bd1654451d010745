/** What a caller may say about a logger's file. All of it can be left out where the file says it itself. */
import type { Dimension } from '../units/quantity.js';
import type { TimeFormat } from './time-format.js';

/** A column of the file: its header (with or without its unit), or its index counted from 0. */
export type ColumnName = string | number;

/** Where a column comes from, and what its header does not say. */
export type ColumnRequest = ColumnName | {
  readonly column: ColumnName;
  /** Unit of the numbers, as `'°C'`, where the header has none or a wrong one. */
  readonly unit?: string;
  /** What is measured, for names that the logger's reader does not know and units that several dimensions share. */
  readonly dimension?: Dimension;
  /** Numbers that stand for a missing reading, in the file's unit, instead of the usual ones (999, -999, -40 °C …). */
  readonly placeholders?: readonly number[];
};

/** Where the time comes from. */
export type TimeRequest = ColumnName | {
  /** One column, or one of the date and one of the time of day. */
  readonly column: ColumnName | readonly [date: ColumnName, time: ColumnName];
  /** How it is written, where the file leaves it open. */
  readonly format?: TimeFormat;
  /** When an elapsed time began, as `'2026-04-12 08:00'`. */
  readonly start?: string;
};

/** The columns wanted, by the name that they get. */
export interface ColumnRequests {
  readonly readingTime?: TimeRequest;
  readonly [name: string]: ColumnRequest | TimeRequest | undefined;
}

export interface LoggerOptions<Requests = ColumnRequests> {
  /** Left out: what header and units make plain is taken, and the report says what that was. */
  readonly columns?: Requests;
  readonly separator?: ',' | ';' | '\t';
  readonly decimal?: '.' | ',';
  /** Line of the header, counted from 1, where it is not found by itself. */
  readonly headerLine?: number;
  /** IANA name of the zone whose wall clock the stamps show, as `'Europe/Vienna'`: takes out daylight saving. */
  readonly timeZone?: string;
  /** Encoding of bytes. Left out: UTF-8, UTF-16 by its mark, else Windows-1252. */
  readonly encoding?: string;
  /** Throw one InputError for all that is wrong in rows, instead of reporting it. */
  readonly strict?: boolean;
}
