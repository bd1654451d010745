#!/usr/bin/env node
/** The command line: a thin layer over the catalogue. */
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { isInputError, problemText } from './calculation/problem.js';
import { catalogue } from './catalogue.js';
import { assessGreenhouse, reportOf } from './greenhouse/index.js';
import { isColumn } from './units/index.js';
import { writeNumber } from './units/write.js';

const usage = `guttation assess FILE          assess the greenhouse described in a JSON file
guttation list                 name every calculation
guttation run NAME [INPUT]     run one; INPUT is JSON, or name=value pairs, or JSON on standard input

  --json    print the result as JSON`;

/** Ends with what is wrong, on standard error: 2 where the command was not understood, 1 where the input was bad. */
function end(code: 1 | 2, message: string): never {
  process.stderr.write(`${message}\n`);
  process.exit(code);
}

function readJson(text: string, from: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    return end(1, `${from} is not JSON: ${(error as Error).message}`);
  }
}

function fileText(path: string | 0): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    return end(1, `cannot read ${path === 0 ? 'standard input' : path}: ${(error as Error).message}`);
  }
}

/** `name=value` pairs as an input; a value that is a number or another JSON value is taken as such, everything else as text. */
function fromPairs(pairs: readonly string[]): unknown {
  const valueOf = (text: string): unknown => {
    try {
      return JSON.parse(text);
    } catch {
      return text;
    }
  };
  return Object.fromEntries(
    pairs.map((pair) => {
      const at = pair.indexOf('=');
      return at > 0 ? [pair.slice(0, at), valueOf(pair.slice(at + 1))] : end(2, `'${pair}' is not name=value`);
    }),
  );
}

/** The input of a calculation: from the words after its name, or else from standard input. */
function givenInput(words: readonly string[]): unknown {
  const [first] = words;
  if (first === undefined) return readJson(fileText(0), 'standard input');
  return first.trimStart().startsWith('{') ? readJson(words.join(' '), 'INPUT') : fromPairs(words);
}

/** A result for people: a line each, groups indented. */
function lines(value: unknown, indent = ''): string {
  return Object.entries(value as object)
    .filter(([, entry]) => !Array.isArray(entry) || entry.length > 0)
    .map(([name, entry]: [string, unknown]) => {
      if (isColumn(entry)) return `${indent}${name} (${entry.unit}): ${Array.from(entry.in(entry.unit as never), writeNumber).join(' ')}`;
      const isNested = typeof entry === 'object' && entry !== null && !('toJSON' in entry);
      return isNested ? `${indent}${name}\n${lines(entry, `${indent}  `)}` : `${indent}${name}: ${(entry as number).toString()}`;
    })
    .join('\n');
}

function main(): void {
  const { values, positionals } = parseArgs({ allowPositionals: true, options: { json: { type: 'boolean' }, help: { type: 'boolean', short: 'h' } } });
  const [command, subject, ...rest] = positionals;
  const print = (result: object, text: () => string): void => void process.stdout.write(`${values.json ? JSON.stringify(result, null, 2) : text()}\n`);
  if (values.help || command === undefined) return void process.stdout.write(`${usage}\n`);

  if (command === 'list') {
    const entries = catalogue().map(({ id, title }) => ({ id, title }));
    return print(entries, () => entries.map(({ id, title }) => `${id.padEnd(32)}${title}`).join('\n'));
  }

  if (command === 'assess' && subject !== undefined) {
    const attempt = assessGreenhouse.try(readJson(fileText(subject), subject));
    if (!attempt.ok) return end(1, attempt.error.message);
    return print(attempt.value, () => reportOf(attempt.value));
  }

  if (command === 'run' && subject !== undefined) {
    const calculation = catalogue().find(({ id }) => id === subject) ?? end(2, `there is no calculation '${subject}'; 'guttation list' names them`);
    const attempt = calculation.try(givenInput(rest));
    if (!attempt.ok) return end(1, isInputError(attempt.error) ? attempt.error.problems.map(problemText).join('\n') : attempt.error.message);
    return print(attempt.value, () => lines(attempt.value));
  }

  end(2, usage);
}

try {
  main();
} catch (error) {
  end(2, error instanceof Error ? error.message : String(error));
}
