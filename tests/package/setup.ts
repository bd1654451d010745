/** Packs the built package and unpacks it where a consumer would have it: `home/node_modules/guttation`. */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    readonly packed: Packed;
  }
}

interface Packed {
  readonly tarball: string;
  /** A folder with the package, what it depends on and what its entries ask their users for. */
  readonly home: string;
  /** A folder with the package alone. */
  readonly bare: string;
  /** What follows `guttation` in the imports of every entry: '', '/units', ... */
  readonly entries: readonly string[];
}

const isEntry = (root: string, name: string): boolean => name !== 'numerics' && existsSync(join(root, 'src', name, 'index.ts'));

export default function setup(project: TestProject): () => void {
  const { root } = project.config;
  const folder = mkdtempSync(join(tmpdir(), 'guttation-'));
  execFileSync('npm', ['pack', '--ignore-scripts', '--silent', '--pack-destination', folder], { cwd: root, stdio: 'pipe' });
  const tarball = join(folder, readdirSync(folder)[0]!);
  for (const home of ['home', 'bare']) {
    const modules = join(folder, home, 'node_modules');
    mkdirSync(join(modules, 'guttation'), { recursive: true });
    execFileSync('tar', ['-xzf', tarball, '-C', join(modules, 'guttation'), '--strip-components=1']);
  }
  for (const name of ['zod', 'decimal.js', 'papaparse']) symlinkSync(join(root, 'node_modules', name), join(folder, 'home', 'node_modules', name));
  const folders = readdirSync(join(root, 'src')).filter((name) => isEntry(root, name));
  project.provide('packed', {
    tarball,
    home: join(folder, 'home'),
    bare: join(folder, 'bare'),
    entries: ['', '/schema', '/catalogue', ...folders.map((name) => `/${name}`)],
  });
  return () => rmSync(folder, { recursive: true });
}
