/** Which columns of a file are read, as what and in which unit: as the caller says, or as headers and units make plain. */
import { problemAt, type Problem } from '../calculation/problem.js';
import { dimensionNamed, dimensionNames } from '../units/by-name.js';
import type { DimensionDefinition, Unit } from '../units/dimension.js';
import { quoted } from '../units/quoted.js';
import { isKnownColumn, knownColumns } from './known-columns.js';
import type { Layout } from './layout.js';
import type { ColumnName, ColumnRequest, ColumnRequests } from './options.js';
import { inputError } from './refuse.js';
import { headerParts, unitMeanings } from './unit-text.js';

export interface ValueColumn {
  readonly name: string;
  readonly index: number;
  readonly definition: DimensionDefinition;
  readonly unit: Unit;
  readonly unitFrom: 'caller' | 'header' | 'unit row';
  readonly guessed: boolean;
  readonly placeholders: readonly number[] | undefined;
}

export interface LeftColumn {
  readonly column: number;
  readonly header: string;
  readonly why: string;
}

/** What header and row of units say of a column. */
export interface Described {
  readonly header: string;
  readonly name: string;
  readonly unit: string | undefined;
  readonly unitFrom: 'header' | 'unit row';
}

export function describeColumns({ header, units, width }: Layout): readonly Described[] {
  return Array.from({ length: Math.max(width, header?.length ?? 0) }, (_, i) => {
    const text = header?.[i] ?? '';
    const parts = headerParts(text);
    const below = units?.[i]?.trim().replace(/^[([{](.*)[)\]}]$/, '$1');
    return below !== undefined && unitMeanings(below).length > 0
      ? { header: text, name: parts.unit === undefined ? text : parts.name, unit: below, unitFrom: 'unit row' }
      : { header: text, name: parts.name, unit: parts.unit, unitFrom: 'header' };
  });
}

const plain = (text: string): string => text.trim().replaceAll(/\s+/g, ' ').toLowerCase();

/** The index of a column, or what is wrong with how it is named. */
export function indexOf(name: ColumnName, columns: readonly Described[]): number | { readonly expected: string; readonly hint?: string } {
  if (typeof name === 'number') return Number.isInteger(name) && name >= 0 && name < columns.length ? name : { expected: `an index from 0 to ${columns.length - 1}` };
  const ways: readonly ((column: Described) => boolean)[] = [
    ({ header }) => header === name.trim(), ({ header }) => plain(header) === plain(name), (column) => plain(column.name) === plain(name),
  ];
  for (const fits of ways) {
    const found = columns.flatMap((column, i) => (fits(column) ? [i] : []));
    if (found.length === 1) return found[0]!;
    if (found.length > 1) return { expected: 'a header that one column has', hint: `give the index: ${found.join(' or ')}` };
  }
  if (columns.every(({ header }) => header === '')) return { expected: `an index from 0 to ${columns.length - 1}`, hint: 'the file has no header' };
  return { expected: `one of the headers ${columns.map(({ header }) => JSON.stringify(header)).join(', ')}`, hint: 'or an index, counted from 0' };
}

/**
 * The columns that the caller asks for.
 * @throws InputError for all that are not there, or of which the unit or the dimension is not known
 */
export function askedColumns(requests: ColumnRequests, columns: readonly Described[]): readonly ValueColumn[] {
  const problems: Problem[] = [];
  const found = Object.entries(requests).flatMap(([name, request]) => {
    if (name === 'readingTime' || request === undefined) return [];
    const made = askedColumn(name, request as ColumnRequest, columns);
    if ('definition' in made) return [made];
    problems.push(problemAt(['columns', name], made));
    return [];
  });
  if (problems.length > 0) throw inputError(problems);
  return found;
}

function askedColumn(name: string, request: ColumnRequest, columns: readonly Described[]): ValueColumn | Omit<Problem, 'path' | 'keys'> {
  const asked = typeof request === 'object' && request !== null ? request : { column: request };
  const { column } = asked;
  if (typeof column !== 'string' && typeof column !== 'number') return { expected: "a header, an index or { column, unit }", received: quoted(column) };
  const index = indexOf(column, columns);
  if (typeof index === 'object') return { ...index, received: quoted(column) };
  if (asked.dimension !== undefined && !dimensionNames().includes(asked.dimension)) return { expected: 'the name of a dimension', received: quoted(asked.dimension) };

  const { placeholders } = asked;
  if (placeholders !== undefined && !(Array.isArray(placeholders) && placeholders.every((one) => typeof one === 'number'))) return { expected: 'placeholders as a list of numbers', received: quoted(placeholders) };

  const { unit: written, unitFrom } = columns[index]!;
  const text = asked.unit ?? written;
  const wanted = asked.dimension ?? (isKnownColumn(name) ? knownColumns[name].dimension : undefined);
  const example = wanted === undefined ? '°C' : Object.keys(dimensionNamed(wanted).units)[0]!;
  if (typeof text !== 'string') return { expected: 'a unit in the header, or one from you', received: quoted(text), hint: `as { column: ${JSON.stringify(column)}, unit: '${example}' }` };
  const meanings = unitMeanings(text).filter(({ dimension }) => wanted === undefined || dimension === wanted);
  const [meaning] = meanings;
  if (!meaning) return { expected: wanted === undefined ? 'a known unit' : `a unit of ${wanted}, as '${example}'`, received: quoted(text) };
  if (meanings.length > 1) {
    return { expected: 'a dimension', received: 'nothing', hint: `'${text}' is a unit of ${meanings.map(({ dimension }) => dimension).join(', ')}: add dimension: '${meaning.dimension}'` };
  }
  return {
    name, index, definition: dimensionNamed(meaning.dimension), unit: meaning.unit, unitFrom: asked.unit === undefined ? unitFrom : 'caller',
    guessed: false, placeholders,
  };
}

/** The columns that headers and units make plain, and why the others are left. */
export function guessedColumns(columns: readonly Described[], ofTime: readonly number[]): { readonly taken: readonly ValueColumn[]; readonly left: readonly LeftColumn[] } {
  const taken: ValueColumn[] = [];
  const left: LeftColumn[] = [];
  columns.forEach(({ header, name, unit: text, unitFrom }, index) => {
    if (ofTime.includes(index)) return;
    const leave = (why: string) => left.push({ column: index, header, why });
    if (text === undefined) return leave("no unit is known: name it in columns, as { column, unit: '°C' }");
    const meanings = unitMeanings(text);
    const known = (Object.keys(knownColumns) as (keyof typeof knownColumns)[]).find((one) =>
      knownColumns[one].words.test(plain(name).replaceAll('_', ' ')) && meanings.some(({ dimension }) => dimension === knownColumns[one].dimension));
    if (known === undefined) return leave('what it measures is not plain from its header: name it in columns');
    if (taken.some((one) => one.name === known)) return leave(`${known} is taken from another column: name this one in columns`);
    const { dimension, unit } = meanings.find((one) => one.dimension === knownColumns[known].dimension)!;
    taken.push({ name: known, index, definition: dimensionNamed(dimension), unit, unitFrom, guessed: true, placeholders: undefined });
    return undefined;
  });
  return { taken, left };
}

