/** Which room of src/ may import which. A room is a folder of src/ or a file at its top. Arrows run down. */

const groundFloor = ['units', 'calculation', 'numerics', 'water', 'solution', 'light', 'glossary', 'sources'];
const science = ['salts', 'conductivity', 'laterals', 'supply', 'pressure-tank', 'vapour', 'dosing', 'recirculation', 'heat'];
const top = ['greenhouse', 'formula-check', 'logger', 'catalogue', 'schema', 'cli', 'index'];

/** What a room may import beside itself; `types` by `import type` only. */
const rooms = {
  units: {},
  numerics: {},
  sources: {},
  glossary: { types: ['units'] },
  calculation: { values: ['units', 'sources', 'numerics'], types: ['glossary'] },
  water: { values: ['numerics'], types: ['sources'] },
  solution: { values: ['water', 'numerics', 'units', 'calculation'], types: ['sources'] },
  light: { values: ['numerics', 'units', 'calculation'], types: ['sources'] },
  ...Object.fromEntries(science.map((room) => [room, { values: groundFloor }])),
  salts: { values: [...groundFloor, 'conductivity'] },
  supply: { values: [...groundFloor, 'laterals'] },
  ...Object.fromEntries(top.map((room) => [room, { values: [...groundFloor, ...science, ...top] }])),
};

/** Who may import a package. */
const packages = {
  'decimal.js': ['salts'],
  zod: ['calculation'],
  papaparse: ['logger'],
  'node:': ['cli'],
};

const roomOf = (path) => path.split('/')[0].replace(/\.[jt]s$/, '');
const isFormulas = (path) => /^[^/]+\/formulas(\.ts$|\/)/.test(path);

/**
 * What is wrong with an import, or undefined.
 * @param {string} file the importing file, relative to src/
 * @param {string} specifier what it imports
 * @param {boolean} typeOnly by `import type`
 */
export function wrongImport(file, specifier, typeOnly) {
  const from = roomOf(file);
  const allowed = rooms[from];
  if (!allowed) return `src/${from} has no row in tests/lint/arrows.js`;
  if (!specifier.startsWith('.')) {
    const name = Object.keys(packages).find((key) => specifier === key || specifier.startsWith(key.endsWith(':') ? key : `${key}/`));
    if (!name) return `no part of src/ imports ${specifier}`;
    return packages[name].includes(from) ? undefined : `${specifier} belongs to ${packages[name].map((room) => `src/${room}`).join(', ')} only`;
  }
  const base = new URL(file, 'file:///src/');
  const path = new URL(specifier, base).pathname;
  if (!path.startsWith('/src/')) return 'src/ imports nothing from outside itself';
  const to = roomOf(path.slice('/src/'.length));
  if (isFormulas(file) && (to === 'units' || to === 'calculation')) return `formulas are plain SI: they import nothing from ${to}/`;
  if (to === from || allowed.values?.includes(to)) return undefined;
  if (!allowed.types?.includes(to)) return `${from} may not import ${to}`;
  return typeOnly ? undefined : `${from} may import only types from ${to}`;
}

/** The table above as an ESLint rule. */
export const arrows = {
  meta: { type: 'problem', schema: [], messages: { wrong: '{{what}}' } },
  create(context) {
    const file = context.filename.replaceAll('\\', '/').split('/src/').pop();
    const check = (source, typeOnly) => {
      const what = source && wrongImport(file, source.value, typeOnly);
      if (what) context.report({ node: source, messageId: 'wrong', data: { what } });
    };
    const allTypes = (specifiers, kind) => specifiers.length > 0 && specifiers.every((one) => one[kind] === 'type');
    return {
      ImportDeclaration: (node) => check(node.source, node.importKind === 'type' || allTypes(node.specifiers, 'importKind')),
      ExportNamedDeclaration: (node) => check(node.source, node.exportKind === 'type' || allTypes(node.specifiers, 'exportKind')),
      ExportAllDeclaration: (node) => check(node.source, node.exportKind === 'type'),
      ImportExpression: (node) => check(node.source, false),
      TSImportType: (node) => check(node.source, true),
    };
  },
};
