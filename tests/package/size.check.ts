import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build as bundleBy, type BuildOptions, type Plugin } from 'esbuild';
import { describe, expect, inject, test } from 'vitest';

interface Row {
  readonly name: string;
  readonly from: string;
  /** Names; or every plain formula of the entry; or everything. */
  readonly import: readonly string[] | 'formulas' | '*';
  /** KB gzipped (1 KB = 1000 bytes). */
  readonly ceiling: number;
  readonly why: string;
  /** Files, or texts in the code, that must not appear. */
  readonly without?: readonly string[];
  /** The only calculations that may appear, by id. */
  readonly calculations?: readonly string[];
}

const { home, entries } = inject('packed');
const rows = JSON.parse(readFileSync(new URL('size.json', import.meta.url), 'utf8')) as Row[];
const load = createRequire(join(home, 'index.js')) as (name: string) => Record<string, unknown>;

const idOf = (value: unknown): string | undefined => (typeof value === 'function' ? (value as { readonly id?: string }).id : undefined);

function codeOf({ from, import: wanted }: Row): string {
  if (wanted === '*') return `import * as all from '${from}'; globalThis.used = all;`;
  const isFormula = ([, value]: readonly [string, unknown]) => typeof value === 'function' && idOf(value) === undefined;
  const names = wanted === 'formulas' ? Object.entries(load(from)).filter(isFormula).map(([name]) => name) : wanted;
  return `import { ${names.join(', ')} } from '${from}'; globalThis.used = [${names.join(', ')}];`;
}

/** What users of an entry bring along themselves. */
const peers = ['papaparse'];

/** Believes nobody who says that a module can be left out. */
const sceptic: Plugin = {
  name: 'sceptic',
  setup(build) {
    build.onResolve({ filter: /^guttation|^\./ }, async ({ path, pluginData, ...options }) => {
      if (pluginData === 'asked') return undefined;
      return { ...(await build.resolve(path, { ...options, pluginData: 'asked' })), sideEffects: true };
    });
  },
};

async function bundle(contents: string, options: BuildOptions) {
  const { outputFiles, metafile } = await bundleBy({
    ...options,
    stdin: { contents, resolveDir: home },
    bundle: true,
    write: false,
    format: 'esm',
    target: 'es2022',
    external: [...(options.external ?? []), ...peers],
    metafile: true,
    logLevel: 'silent',
  });
  const files = Object.entries(Object.values(metafile.outputs)[0]!.inputs).filter(([, { bytesInOutput }]) => bytesInOutput > 0);
  return { text: outputFiles[0]!.text, files: files.map(([path]) => path) };
}

describe.each(rows)('$name from $from', (row) => {
  test(`is at most ${row.ceiling} KB gzipped`, async () => {
    const { text } = await bundle(codeOf(row), { minify: true });
    const size = gzipSync(text, { level: 9 }).length / 1000;
    console.log(`${row.from}: ${row.name}: ${size.toFixed(2)} KB of ${row.ceiling}`);
    expect(size).toBeLessThanOrEqual(row.ceiling);
  });

  test('brings nothing else along', async () => {
    const { text, files } = await bundle(codeOf(row), { minifySyntax: true });
    expect((row.without ?? []).filter((stray) => text.includes(stray) || files.some((file) => file.includes(stray)))).toEqual([]);
    const allowed = row.calculations;
    const ids = Object.values(load('guttation')).map(idOf).filter((id) => id !== undefined);
    if (allowed) expect(ids.filter((id) => text.includes(`id: "${id}"`)).sort()).toEqual([...allowed].sort());
  });
});

// The catalogue holds a list of everything, and shares it with the entry for all.
test.each(entries.filter((entry) => entry !== '' && entry !== '/catalogue'))('loading guttation%s runs nothing', async (entry) => {
  const { text } = await bundle(`import 'guttation${entry}';`, { minifySyntax: true, plugins: [sceptic], external: ['zod', 'decimal.js'] });
  const harmless = /^(import .*|\/\/ .*|(var \w+ = )?[-+*/(). \d]+;?|)$/; // imports of packages, comments, arithmetic of numbers
  const rest = text.replaceAll(/Math\.\w+/g, '1').split('\n').filter((line) => !harmless.test(line));
  expect(rest).toEqual([]);
});

test('every entry has a ceiling', () => {
  const whole = rows.filter((row) => row.import === '*').map(({ from }) => from);
  expect(whole.sort()).toEqual(entries.map((entry) => `guttation${entry}`).sort());
});
