import { build } from 'esbuild';
import { expect, test } from 'vitest';

type Imports = Readonly<Record<string, readonly string[]>>;

/** Every chain of imports that comes back to where it began, once per file that closes one. */
function circles(imports: Imports): string[] {
  const found: string[] = [];
  const done = new Set<string>();
  const visit = (file: string, trail: readonly string[]) => {
    if (trail.includes(file)) {
      found.push([...trail.slice(trail.indexOf(file)), file].join(' -> '));
    } else if (!done.has(file)) {
      for (const next of imports[file] ?? []) visit(next, [...trail, file]);
      done.add(file);
    }
  };
  for (const file of Object.keys(imports)) visit(file, []);
  return found;
}

test('a circle is found', () => {
  expect(circles({ a: ['b', 'c'], b: ['c'], c: [] })).toEqual([]);
  expect(circles({ a: ['b'], b: ['c'], c: ['b'] })).toEqual(['b -> c -> b']);
});

test('src/ has no circular imports (imports of types aside)', async () => {
  const { metafile } = await build({ entryPoints: ['src/**/*.ts'], bundle: true, write: false, outdir: '.', packages: 'external', metafile: true, format: 'esm', platform: 'node' });
  const imports = Object.fromEntries(Object.entries(metafile.inputs).map(([file, input]) => [file, input.imports.map((one) => one.path)]));
  expect(Object.keys(imports).length).toBeGreaterThan(10);
  expect(circles(imports)).toEqual([]);
});
