/** The ledger of check values: tests/references/<folder>/<subject>.json, read, run against src/ and compared. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import * as z from 'zod';
import { sources } from '../../src/sources.js';
import { compare, type Comparison, type Expected } from './compare.js';

const root = fileURLToPath(new URL('../..', import.meta.url));

export const kinds = ['published', 'worked intermediate', 'independent program', 'independent calculation', 'common practice', 'from memory'] as const;

const amount = z.union([z.number(), z.string()]);
const source = z.strictObject({
  kind: z.enum(kinds),
  key: z.enum(Object.keys(sources) as (keyof typeof sources)[], { error: (issue) => `no source '${String(issue.input)}' in src/sources.ts` }).optional(),
  where: z.string().min(1).optional(),
  mark: z.enum(['seen', 'seen second-hand', 'from memory']).optional(),
});
const check = z.strictObject({
  id: z.string().regex(/^[\w.+-]+$/),
  of: z.string().regex(/^[a-z-]+\/\w+$/),
  input: z.union([z.array(z.unknown()), z.record(z.string(), z.unknown())]),
  expect: z.union([amount, z.boolean(), z.record(z.string(), z.union([amount, z.boolean()]))]),
  tolerance: z.union([amount, z.record(z.string(), amount)]).optional(),
  source: source
    .refine(({ kind, key }) => key !== undefined || !['published', 'worked intermediate'].includes(kind), 'a published value names its source by key')
    .refine(({ kind, where }) => where !== undefined || ['common practice', 'from memory'].includes(kind), 'say where in the source (table, equation, version)')
    .refine(({ kind, mark }) => mark !== undefined || !['published', 'worked intermediate'].includes(kind), 'a published value is marked seen, seen second-hand or from memory'),
});
const referenceFile = z.strictObject({ title: z.string().min(1), checks: z.array(check).min(1) });
const disagreementList = z.array(z.strictObject({ check: z.string(), reason: z.string().min(1) }));

export type Check = z.infer<typeof check>;

export interface Reference {
  /** Folder under tests/references/, and under src/ as a rule. */
  readonly folder: string;
  /** Path under tests/references/, without `.json`. */
  readonly name: string;
  readonly title: string;
  readonly checks: readonly Check[];
}

/** A file of check values; throws what is wrong with it. */
export function readReference(name: string, text: string): Reference {
  const result = referenceFile.safeParse(JSON.parse(text));
  if (!result.success) throw new Error(`tests/references/${name}.json\n${z.prettifyError(result.error)}`);
  const ids = result.data.checks.map(({ id }) => id);
  const twice = ids.find((id, i) => ids.indexOf(id) !== i);
  if (twice !== undefined) throw new Error(`tests/references/${name}.json\n'${twice}' names two checks`);
  return { folder: name.split('/')[0]!, name, ...result.data };
}

/** Names of all files of check values, in alphabetical order. */
export function referenceNames(): string[] {
  const paths = readdirSync(`${root}tests/references`, { recursive: true, encoding: 'utf8' }).filter((path) => path.endsWith('.json'));
  return paths.map((path) => path.replaceAll('\\', '/').replace(/\.json$/, '')).sort();
}

/** The file of a name. */
export const readNamed = (name: string): Reference => readReference(name, readFileSync(`${root}tests/references/${name}.json`, 'utf8'));

/** Full name of a check: where it stands and its id. */
export const nameOf = (reference: Reference, { id }: Check): string => `${reference.name}/${id}`;

/** Reasons of the known misses, by full name of the check. An entry gives the full name, or the id alone where one check has it. */
export function readDisagreements(ledger: readonly Reference[], path = `${root}tests/disagreements.json`): Map<string, string> {
  const names = ledger.flatMap((reference) => reference.checks.map((one) => nameOf(reference, one)));
  const entries = existsSync(path) ? disagreementList.parse(JSON.parse(readFileSync(path, 'utf8'))) : [];
  return new Map(
    entries.map(({ check, reason }) => {
      const meant = names.filter((name) => name === check || name.endsWith(`/${check}`));
      if (meant.length !== 1) throw new Error(`tests/disagreements.json: '${check}' names ${meant.length} checks, not one`);
      return [meant[0]!, reason];
    }),
  );
}

/** Runs a check: one comparison for every value it expects. */
export async function runCheck({ of, input, expect, tolerance }: Check): Promise<Comparison[]> {
  const [folder, name] = of.split('/') as [string, string];
  const path = `${root}src/${folder}/index.ts`;
  if (!existsSync(path)) throw new Error(`'${of}': there is no src/${folder}/index.ts`);
  const exported = ((await import(/* @vite-ignore */ pathToFileURL(path).href)) as Record<string, unknown>)[name];
  if (typeof exported !== 'function') throw new Error(`'${of}': src/${folder}/index.ts exports no function '${name}'`);
  const result: unknown = Array.isArray(input) ? exported(...input) : exported(input);
  const expected: Readonly<Record<string, Expected>> = typeof expect === 'object' ? expect : { '': expect };
  const paths = Object.keys(typeof tolerance === 'object' ? tolerance : {});
  const astray = paths.find((one) => !Object.hasOwn(expected, one));
  if (astray !== undefined) throw new Error(`a tolerance for '${astray}', which is not expected`);
  return Object.entries(expected).map(([at, value]) => compare(result, at, value, typeof tolerance === 'object' ? tolerance[at] : tolerance));
}
