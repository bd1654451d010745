import { RuleTester } from 'eslint';
import tseslint from 'typescript-eslint';
import { afterAll, describe, it } from 'vitest';
import { arrows } from './arrows.js';
import { pure } from './pure.js';

Object.assign(RuleTester, { afterAll, describe, it, itOnly: it });
const tester = new RuleTester({ languageOptions: { parser: tseslint.parser } });
const wrong = (filename: string, code: string, what: string) => ({ filename: `/somewhere/src/${filename}`, code, errors: [{ message: what }] });
const right = (filename: string, code: string) => ({ filename: `/somewhere/src/${filename}`, code });

tester.run('arrows', arrows as never, {
  valid: [
    right('vapour/deficit.ts', "import { kelvin } from '../units/index.js'; import { x } from './formulas.js';"),
    right('vapour/formulas.ts', "import { density } from '../water/density.js'; import type { Root } from '../numerics/roots.js';"),
    right('supply/zone.ts', "import { lateral } from '../laterals/index.js';"),
    right('glossary.ts', "import type { Dimension } from './units/index.js';"),
    right('calculation/input.ts', "import * as z from 'zod/mini'; import { type Name } from '../glossary.js';"),
    right('water/density.ts', "import type { SourceKey } from '../sources.js';"),
    right('salts/label.ts', "import { Decimal } from 'decimal.js';"),
    right('cli.ts', "import { readFileSync } from 'node:fs'; import { catalogue } from './catalogue.js';"),
    right('index.ts', "export * from './greenhouse/index.js';"),
  ],
  invalid: [
    wrong('vapour/deficit.ts', "import { dissolve } from '../salts/index.js';", 'vapour may not import salts'),
    wrong('vapour/deficit.ts', "export * from '../greenhouse/index.js';", 'vapour may not import greenhouse'),
    wrong('vapour/deficit.ts', "const all = () => import('../catalogue.js');", 'vapour may not import catalogue'),
    wrong('vapour/deficit.ts', "let all: typeof import('../salts/index.js');", 'vapour may not import salts'),
    wrong('laterals/lateral.ts', "import { zone } from '../supply/index.js';", 'laterals may not import supply'),
    wrong('units/quantity.ts', "import type { SourceKey } from '../sources.js';", 'units may not import sources'),
    wrong('glossary.ts', "import { kelvin } from './units/index.js';", 'glossary may import only types from units'),
    wrong('glossary.ts', "import { kelvin, type Unit } from './units/index.js';", 'glossary may import only types from units'),
    wrong('vapour/formulas.ts', "import { kelvin } from '../units/index.js';", 'formulas are plain SI: they import nothing from units/'),
    wrong('vapour/formulas/dew.ts', "import type { Note } from '../../calculation/index.js';", 'formulas are plain SI: they import nothing from calculation/'),
    wrong('vapour/deficit.ts', "import { Decimal } from 'decimal.js';", 'decimal.js belongs to src/salts only'),
    wrong('vapour/deficit.ts', "import * as z from 'zod/mini';", 'zod/mini belongs to src/calculation only'),
    wrong('vapour/deficit.ts', "import { readFileSync } from 'node:fs';", 'node:fs belongs to src/cli only'),
    wrong('vapour/deficit.ts', "import _ from 'lodash';", 'no part of src/ imports lodash'),
    wrong('vapour/deficit.ts', "import x from '../../tests/x.js';", 'src/ imports nothing from outside itself'),
    wrong('attic/deficit.ts', "import { x } from '../units/index.js';", 'src/attic has no row in tests/lint/arrows.js'),
  ],
});

const fixed = (code: string, output: string) => ({ code, output, errors: [{ messageId: 'call' }] });
const kept = (code: string) => ({ code, errors: [{ messageId: 'class' }] });

tester.run('pure', pure as never, {
  valid: [
    'export const deficit = /* @__PURE__ */ calculation({ inputs: () => object({ a: number() }) });',
    'export const later = () => run(new Map());',
    'export class A { #x = make(); [Symbol.toPrimitive]() { return make(); } }',
    'const A = /* @__PURE__ */ (() => { class A { get [mark]() { return true; } static { register(A); } } return A; })();',
  ],
  invalid: [
    fixed('export const deficit = calculation({});', 'export const deficit = /* @__PURE__ */ calculation({});'),
    fixed('const a = /* @__PURE__ */ f(g());', 'const a = /* @__PURE__ */ f(/* @__PURE__ */ g());'),
    fixed('const m = new Map();', 'const m = /* @__PURE__ */ new Map();'),
    fixed('class A { static x = make(); }', 'class A { static x = /* @__PURE__ */ make(); }'),
    { code: 'const a = [...b, 1];', errors: [{ messageId: 'spread' }] },
    { code: 'const a = /* @__PURE__ */ f({ ...b });', errors: [{ messageId: 'spread' }] },
    kept('class A { static { register(A); } }'),
    kept('class A { get [mark]() { return true; } }'),
    { code: 'count++;', errors: [{ messageId: 'statement' }] },
  ],
});
