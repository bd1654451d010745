import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { publint } from 'publint';
import { formatMessage } from 'publint/utils';
import { expect, inject, test } from 'vitest';

const { tarball, bare, entries } = inject('packed');
const folder = join(bare, 'node_modules', 'guttation');
const files = readdirSync(folder, { recursive: true, withFileTypes: true })
  .filter((one) => one.isFile())
  .map((one) => join(one.parentPath, one.name).slice(folder.length + 1));

test('the tarball holds what it should', () => {
  const strays = files.filter((path) => !/^dist\/.+\.(js|cjs|d\.ts|d\.cts|js\.map|cjs\.map)$/.test(path));
  expect(strays.sort()).toEqual(['CHANGELOG.md', 'LICENSE', 'README.md', 'package.json']);
});

test('the command is a program', () => {
  const { bin } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as { bin: Record<string, string> };
  expect(existsSync(join(folder, bin['guttation']!))).toBe(true);
  expect(readFileSync(join(folder, bin['guttation']!), 'utf8')).toMatch(/^#!\/usr\/bin\/env node\n/);
});

test('no declaration shows a type of a dependency', () => {
  const declarations = files.filter((path) => /\.d\.c?ts$/.test(path));
  expect(declarations.length).toBeGreaterThan(2 * entries.length - 1);
  expect(declarations.filter((path) => /from ['"](?!\.)/.test(readFileSync(join(folder, path), 'utf8')))).toEqual([]);
});

test('publint finds nothing', async () => {
  const { messages, pkg } = await publint({ pkgDir: folder, pack: false, strict: true });
  expect(messages.map((message) => formatMessage(message, pkg))).toEqual([]);
});

test('types and code of every entry belong together', () => {
  const names = entries.map((entry) => entry.slice(1) || '.');
  execFileSync('npx', ['attw', tarball, '--profile', 'node16', '--no-definitely-typed', '--no-color', '--entrypoints', ...names], { stdio: 'pipe' });
});
