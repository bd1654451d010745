import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { examplesOfPage, examplesOfSource, root, runExample, typeErrorsOf } from './support/examples.js';

const filesIn = (folder: string, end: string): string[] =>
  readdirSync(root + folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith(end) && !path.startsWith('api'))
    .map((path) => `${folder}/${path.replaceAll('\\', '/')}`)
    .sort();
const read = (path: string): string => readFileSync(root + path, 'utf8');

const readme = readdirSync(root).filter((path) => path === 'README.md');
const ofPages = [...readme, ...filesIn('docs', '.md')].flatMap((path) => examplesOfPage(path, read(path)));
const ofSource = filesIn('src', '.ts').flatMap((path) => examplesOfSource(path, read(path)));

for (const example of ofPages.filter(({ runs }) => runs)) {
  test(example.at, async () => {
    await runExample(example);
  });
}

for (const example of ofSource) {
  test(example.at, async () => {
    expect(await runExample(example), 'an example of a docstring claims something: end a line with // => value').toBeGreaterThan(0);
  });
}

test('the examples of README and docs compile', { timeout: 60_000 }, () => {
  expect(typeErrorsOf(ofPages)).toEqual([]);
});

describe('the runner', () => {
  const source = 'src/units/toy.ts';
  const run = (code: string) => runExample({ code, scope: [] });

  test('finds blocks and docstrings', () => {
    const page = '# Title\n\n```ts\na();\n```\n\n```sh\nrm\n```\n\n```ts no-run\nb();\n```\n';
    expect(examplesOfPage('README.md', page)).toMatchObject([{ at: 'README.md:4', code: 'a();\n', runs: true }, { code: 'b();\n', runs: false }]);
    const text = 'x;\n/**\n * Doc.\n * @example\n * a(1); // => 2\n * @see b\n */\n/** @example b() // => 3 */\n/**\n * @example\n * ```ts\n * c();\n * ```\n */';
    expect(examplesOfSource(source, text).map(({ at, code }) => [at, code.trim()])).toEqual([[`${source}:4`, 'a(1); // => 2'], [`${source}:8`, 'b() // => 3'], [`${source}:10`, 'c();']]);
  });

  test.each([
    ['1 / 3 // => 0.333', 1],
    ['1e-7 / 3; // => 3.33e-8', 1],
    ['const third: number = 1 / 3; // => 0.33\nthird * 3 // => 1', 2],
    ["console.log('a'); // => a\n'b' // => 'b'", 2],
    ['for (const x of [1, 2]) {\n  x < 3; // => true\n}', 2],
    ['2453780 // => 2.45378e6', 1],
    ['2 / 3 // => 0.66…, of the whole', 1],
    ["[1, { a: 'b 1', c: 1 / 3 }] // => [1, { a: 'b 1', c: 0.333 }]", 1],
    ["import { quantity } from 'guttation/units';\nimport type { Quantity } from 'guttation/units';\nconst q: Quantity<'mass'> = quantity('2 kg', 'mass');\nq // => 2 kg", 1],
  ])('%s', async (code, claims) => {
    expect(await run(code)).toBe(claims);
  });

  test.each(['1 / 3 // => 0.334', '2 // => 3', '2 / 3 // => 0.66', '1.2 // => 1.2.3', "'a' // => b", '[1, 2] // => [1, 3]', '[1, 2] // => [1]', 'NaN // => 0', 'throw new Error("x")', 'nobody()'])('fails on %s', async (code) => {
    await expect(run(code)).rejects.toThrow();
  });

  test('compiles what is not run', () => {
    const example = { at: 'README.md:1', runs: false, scope: [] };
    const code = "import { quantity } from 'guttation/units';\nconst n: number = quantity('2 kg', 'mass').in('kg');";
    expect(typeErrorsOf([{ ...example, code }])).toEqual([]);
    expect(typeErrorsOf([{ ...example, code: code.replace('number', 'string') }])).toEqual([expect.stringMatching(/^README.md:1: .*not assignable/)]);
  });
});
