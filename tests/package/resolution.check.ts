import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import ts from 'typescript';
import { describe, expect, inject, test } from 'vitest';
import { typeErrors } from '../support/compile.js';

const { home, bare, entries } = inject('packed');

const exportsBy = (type: 'module' | 'commonjs', load: string): string[] => {
  const code = `const all = ${load}; console.log(Object.keys(all).filter((name) => name !== 'default' && name !== 'module.exports').sort().join());`;
  return execFileSync('node', [`--input-type=${type}`, '-e', code], { cwd: home, encoding: 'utf8' }).trim().split(',');
};

describe.each(entries)('guttation%s', (entry) => {
  test('has the same exports for import and require', () => {
    const byImport = exportsBy('module', `await import('guttation${entry}')`);
    expect(byImport).not.toEqual(['']);
    expect(exportsBy('commonjs', `require('guttation${entry}')`)).toEqual(byImport);
  });
});

test.each(['/numerics', '/glossary', '/cli.js'])('guttation%s is nobody else’s business', (entry) => {
  expect(() => execFileSync('node', ['--input-type=module', '-e', `await import('guttation${entry}')`], { cwd: home, stdio: 'pipe' })).toThrow();
});

describe('types resolve, with nothing else installed,', () => {
  const code = entries.map((entry, i) => `import * as entry${i} from 'guttation${entry}';\nexport const used${i}: object = entry${i};\n`).join('');
  const always: ts.CompilerOptions = { strict: true, noEmit: true, types: [], target: ts.ScriptTarget.ES2022, lib: ['lib.es2022.d.ts'] };

  test.each([
    ['node16, import', 'consumer.mts', { module: ts.ModuleKind.Node16 }],
    ['node16, require', 'consumer.cts', { module: ts.ModuleKind.Node16 }],
    ['nodenext, import', 'consumer.mts', { module: ts.ModuleKind.NodeNext }],
    ['nodenext, require', 'consumer.cts', { module: ts.ModuleKind.NodeNext }],
    ['bundler', 'consumer.ts', { module: ts.ModuleKind.ESNext, moduleResolution: ts.ModuleResolutionKind.Bundler }],
  ])('by %s', (_, file, options) => {
    expect(typeErrors(new Map([[join(bare, file), code]]), { ...always, ...options })).toEqual([]);
  });
});
