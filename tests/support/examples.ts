/** The examples of the documentation, found and run. `expression; // => value` claims what the expression gives. */
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { transform } from 'esbuild';
import ts from 'typescript';
import { holds } from './claim.js';
import { typeErrors } from './compile.js';

export const root = fileURLToPath(new URL('../..', import.meta.url));

export interface Example {
  /** `path:line` */
  readonly at: string;
  readonly code: string;
  /** False for blocks marked `ts no-run`. */
  readonly runs: boolean;
  /** Modules whose exports the code may use without importing them. */
  readonly scope: readonly string[];
}

const lineOf = (text: string, index: number): number => text.slice(0, index).split('\n').length;
const fence = /^```ts([^\n]*)\n(.*?)^```/gms;

/** The fenced `ts` blocks of a page. */
export function examplesOfPage(path: string, text: string): Example[] {
  return [...text.matchAll(fence)].map((match) => ({
    at: `${path}:${lineOf(text, match.index) + 1}`,
    code: match[2]!,
    runs: !match[1]!.includes('no-run'),
    scope: [],
  }));
}

/** The `@example` blocks of the docstrings of a source file. */
export function examplesOfSource(path: string, text: string): Example[] {
  const scope = ['src/index.ts', path.replace(/[^/]+$/, 'index.ts'), path];
  return [...text.matchAll(/\/\*\*.*?\*\//gs)].flatMap((comment) =>
    [...comment[0].matchAll(/@example\b(.*?)(?=\n\s*\*\s*@[a-z]|\*\/$)/gs)].map((match) => {
      const lines = match[1]!.replaceAll(/^[ \t]*\* ?/gm, '');
      const [fenced] = examplesOfPage(path, lines);
      return { at: `${path}:${lineOf(text, comment.index + match.index)}`, code: fenced?.code ?? lines, runs: fenced?.runs ?? true, scope };
    }),
  );
}

/** Source file behind an import of this package; undefined for other packages. */
export function sourceOf(specifier: string): string | undefined {
  if (specifier === 'guttation') return 'src/index.ts';
  if (!specifier.startsWith('guttation/')) return undefined;
  const name = specifier.slice('guttation/'.length);
  return existsSync(`${root}src/${name}.ts`) ? `src/${name}.ts` : `src/${name}/index.ts`;
}

/** The code with its imports made dynamic and its claims made calls. */
function rewrite(code: string): string {
  const file = ts.createSourceFile('example.ts', code, ts.ScriptTarget.ES2022, true);
  const edits: { from: number; to: number; text: string }[] = [];
  const claimAfter = (node: ts.Node): string | undefined => {
    const comment = ts.getTrailingCommentRanges(code, node.end)?.[0];
    return comment && /^\/\/ => (.*)$/.exec(code.slice(comment.pos, comment.end).trimEnd())?.[1];
  };
  const visit = (node: ts.Node): void => {
    const claim = ts.isStatement(node) ? claimAfter(node) : undefined;
    if (ts.isImportDeclaration(node)) {
      const { namedBindings, isTypeOnly } = node.importClause ?? {};
      const names = namedBindings && ts.isNamedImports(namedBindings) ? namedBindings.elements.filter((one) => !one.isTypeOnly) : [];
      const pattern = namedBindings && ts.isNamespaceImport(namedBindings) ? namedBindings.name.text : `{ ${names.map((one) => one.getText().replace(' as ', ': ')).join(', ')} }`;
      edits.push({ from: node.getStart(), to: node.end, text: isTypeOnly ? '' : `const ${pattern} = await $import(${node.moduleSpecifier.getText()});` });
    } else if (claim !== undefined && ts.isExpressionStatement(node)) {
      const { expression } = node;
      const logged = ts.isCallExpression(expression) && expression.expression.getText() === 'console.log' ? expression.arguments[0] : undefined;
      edits.push({ from: node.getStart(), to: node.end, text: `$claim(${(logged ?? expression).getText()}, ${JSON.stringify(claim)});` });
    } else if (claim !== undefined && ts.isVariableStatement(node)) {
      edits.push({ from: node.end, to: node.end, text: ` $claim(${node.declarationList.declarations[0]!.name.getText()}, ${JSON.stringify(claim)});` });
    } else {
      ts.forEachChild(node, visit);
    }
  };
  visit(file);
  return edits.reduceRight((text, { from, to, text: put }) => text.slice(0, from) + put + text.slice(to), code);
}

type Runner = (...values: readonly unknown[]) => Promise<void>;
const AsyncFunction = Object.getPrototypeOf(async () => {}).constructor as new (...names: readonly string[]) => Runner;

const load = (path: string): Promise<Record<string, unknown>> => import(/* @vite-ignore */ pathToFileURL(root + path).href);

/** Runs an example; returns how many claims held, throws at the first that does not. */
export async function runExample({ code, scope }: Pick<Example, 'code' | 'scope'>): Promise<number> {
  let held = 0;
  const $claim = (value: unknown, claim: string): void => {
    if (!holds(value, claim)) throw new Error(`the example claims ${claim}, the code gives ${typeof value === 'object' ? JSON.stringify(value) : String(value)}`);
    held++;
  };
  const $import = (specifier: string) => {
    const path = sourceOf(specifier);
    return path === undefined ? import(/* @vite-ignore */ specifier) : load(path);
  };
  const modules = await Promise.all(scope.filter((path) => existsSync(root + path)).map(load));
  const names: Record<string, unknown> = Object.assign({}, ...modules, { $claim, $import, console: { log: () => undefined } });
  const { code: js } = await transform(rewrite(code), { loader: 'ts', target: 'es2022' });
  await new AsyncFunction(...Object.keys(names), `'use strict'; {\n${js}\n}`)(...Object.values(names));
  return held;
}

/** What the compiler says of the examples of pages, as if they stood in files of their own. */
export function typeErrorsOf(examples: readonly Example[]): string[] {
  const texts = new Map(examples.map(({ code }, i) => [`${root}example-${i}.ts`, `${code}\nexport {};\n`]));
  const config = ts.readConfigFile(`${root}tsconfig.json`, (path) => readFileSync(path, 'utf8')).config as object;
  const { options } = ts.parseJsonConfigFileContent({ ...config, files: [] }, ts.sys, root);
  const paths = { guttation: [`${root}src/index.ts`], 'guttation/*': [`${root}src/*/index.ts`, `${root}src/*.ts`] };
  const errors = typeErrors(texts, { ...options, paths, noUnusedLocals: false, noUnusedParameters: false });
  return examples.flatMap(({ at }, i) => errors.filter(({ path }) => path === `${root}example-${i}.ts`).map(({ message }) => `${at}: ${message}`));
}
