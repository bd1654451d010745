/** Options that the compiler has not seen: from forms and files. */
import { problemAt, type Problem } from '../calculation/problem.js';
import { quoted } from '../units/quoted.js';
import type { LoggerOptions } from './options.js';
import { inputError } from './refuse.js';

const wanted: { readonly [Name in keyof LoggerOptions]-?: readonly [expected: string, is: (value: unknown) => boolean] } = {
  columns: ['columns by the name that they get', (value) => typeof value === 'object' && value !== null && !Array.isArray(value)],
  separator: ["',', ';' or '\\t'", (value) => value === ',' || value === ';' || value === '\t'],
  decimal: ["'.' or ','", (value) => value === '.' || value === ','],
  headerLine: ['the number of a line, from 1', (value) => Number.isInteger(value) && (value as number) > 0],
  timeZone: ["the IANA name of a time zone, as 'Europe/Vienna'", (value) => typeof value === 'string'],
  encoding: ["the name of an encoding, as 'utf-8'", (value) => typeof value === 'string'],
  strict: ['true or false', (value) => typeof value === 'boolean'],
};

/** @throws InputError that lists what is wrong with the options */
export function checkOptions(options: LoggerOptions): void {
  if (typeof options !== 'object' || options === null) throw inputError([problemAt(['options'], { expected: 'an object', received: quoted(options) })]);
  const problems = Object.entries(options).flatMap(([name, value]): readonly Problem[] => {
    if (value === undefined) return [];
    if (!Object.hasOwn(wanted, name)) return [problemAt([name], { expected: `one of ${Object.keys(wanted).join(', ')}`, received: quoted(value) })];
    const [expected, is] = wanted[name as keyof LoggerOptions];
    return is(value) ? [] : [problemAt([name], { expected, received: quoted(value) })];
  });
  if (problems.length > 0) throw inputError(problems);
}
