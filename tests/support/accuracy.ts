/** Writes docs/accuracy.md from a run of every check value; with `--check` fails where the page on disk differs. */
import { readFileSync, writeFileSync } from 'node:fs';
import { type Source, sources } from '../../src/sources.js';
import type { Comparison } from './compare.js';
import { missesOf, saltSeries } from './measured-salts.js';
import { waterMisses } from './measured-waters.js';
import { statisticsOf } from './statistics.js';
import { costAgainstHighs, costTolerances, fitAgainstQuadprog, weighingCases } from './weighing-cases.js';
import { type Check, kinds, nameOf, readDisagreements, readNamed, referenceNames, runCheck } from './ledger.js';

const page = new URL('../../docs/accuracy.md', import.meta.url);

const cell = (text: string): string => text.replaceAll('|', '\\|');
const table = (...rows: readonly string[][]): string => {
  const lines = rows.map((row) => `| ${row.map(cell).join(' | ')} |`);
  return [lines[0], `|${' --- |'.repeat(rows[0]!.length)}`, ...lines.slice(1)].join('\n');
};

function sourceText({ source: { kind, key, where, mark } }: Check): string {
  const what = [key, where].filter((part) => part !== undefined).join(', ');
  return [kind === 'published' ? what : [kind, what].filter(Boolean).join(': '), mark === 'seen' ? '' : mark && `(${mark})`].filter(Boolean).join(' ');
}

const ledger = referenceNames().map(readNamed);
const disagreements = readDisagreements(ledger);
const wrong: string[] = [];
const known: string[][] = [];
const sections: string[] = [];
const cited = new Map<string, Source>();
/** What the chemistry claims of itself, and the check values that it is held against. */
const claims = [
  { what: 'pH of a water with acid in it', reference: 'salts/acid-dose', kind: 'independent program', path: /pH/, unit: 'absolute', claim: '0.03', against: 'the public speciation program, its own constants' },
  { what: 'acid for a pH', reference: 'salts/acid-dose', kind: 'independent program', path: /^acidConcentration$/, unit: 'share', claim: '2 %', against: 'the same' },
  { what: 'pH of a water with acid in it', reference: 'salts/acid-charge-balance', kind: 'independent calculation', path: /pH/, unit: 'absolute', claim: '0.03', against: 'a separate program by bisection of the balance of charges' },
  { what: 'acid for a pH', reference: 'salts/acid-charge-balance', kind: 'independent calculation', path: /^acidConcentration$/, unit: 'share', claim: '2 %', against: 'the same' },
  { what: 'saturation index', reference: 'solution/saturation', kind: 'independent calculation', path: /saturationIndices/, unit: 'absolute', claim: '0.1', against: 'a separate program with the public database and its own activity coefficients' },
] as const;
const largest = claims.map(() => ({ count: 0, miss: 0 }));
let values = 0;

for (const reference of ledger) {
  const rows: string[][] = [];
  for (const check of reference.checks) {
    const name = nameOf(reference, check);
    const comparisons = await runCheck(check).catch((cause: unknown) => {
      throw new Error(`${name} does not run`, { cause });
    });
    if (comparisons.every(({ agrees }) => agrees) === disagreements.has(name)) wrong.push(name);
    if (disagreements.has(name)) known.push([name, disagreements.get(name)!]);
    if (check.source.key) cited.set(check.source.key, sources[check.source.key]);
    values += comparisons.length;
    claims.forEach(({ reference: name, kind, path, unit }, i) => {
      if (name !== reference.name || kind !== check.source.kind) return;
      for (const { path: at, miss } of comparisons) {
        if (!path.test(at) || !miss) continue;
        largest[i]!.count += 1;
        largest[i]!.miss = Math.max(largest[i]!.miss, miss[unit]);
      }
    });
    const label = ({ path, agrees }: Comparison) => [check.id, path && `\`${path}\``, agrees ? '' : '**misses**'].filter(Boolean).join(' ');
    rows.push(...comparisons.map((one) => [label(one), check.of, one.expected, one.got, one.error, one.tolerance, sourceText(check)]));
  }
  sections.push(`### ${reference.title}\n\n\`tests/references/${reference.name}.json\`\n\n${table(['check', 'of', 'expected', 'got', 'error', 'tolerance', 'source'], ...rows)}`);
}

const all = ledger.flatMap(({ checks }) => checks);
const count = (kind: string) => all.filter((check) => check.source.kind === kind);
const folders = [...new Set(ledger.map(({ folder }) => folder))];
const counts = kinds.map((kind) => [kind, String(count(kind).length), String(count(kind).filter(({ source }) => source.mark === 'seen').length)]);
const perFolder = folders.map((folder) => [folder, String(ledger.filter((one) => one.folder === folder).flatMap(({ checks }) => checks).length)]);

const percent = (fraction: number): string => `${(100 * fraction).toFixed(1)} %`;
const missRow = (name: string, misses: readonly number[], source: string): string[] => {
  const { count: number, mean, meanSize, nineInTen, worst } = statisticsOf(misses);
  return [name, String(number), percent(mean), percent(meanSize), percent(nineInTen), percent(worst), source];
};
const waterRow = (name: string, key: keyof (typeof waterMisses)[number]): string[] => missRow(name, waterMisses.map((one) => one[key]), 'stuyfzand');
const measured = table(
  ['conductivity of', 'points', 'mean', 'mean size', 'nine in ten within', 'worst', 'measured by'],
  waterRow('natural waters, the model', 'model'),
  waterRow('the same by the limiting sum', 'limitingSum'),
  waterRow('the same by method 2510', 'standardMethods'),
  waterRow('the same by a tenth of the cations', 'tenthOfCations'),
  waterRow('the same by the line of cations (made for feeds)', 'lineOfCations'),
  ...saltSeries.map((series) => missRow(series.name, missesOf(series), `${series.source}, ${series.where}`)),
);

/** The next power of ten, so that the text is the same on every machine. */
const atMost = (misses: readonly number[]): string => `below 1e${Math.ceil(Math.log10(Math.max(...misses, 1e-11)))}`;
const shareOff = ({ ours, theirs }: { readonly ours: number; readonly theirs: number }): number => Math.abs(ours - theirs) / (theirs + 1e-11);
const claimed = table(
  ['of', 'values', 'largest miss', 'claimed', 'against'],
  ...claims.map(({ what, unit, claim, against }, i) => [what, String(largest[i]!.count), unit === 'share' ? percent(largest[i]!.miss) : largest[i]!.miss.toFixed(3), claim, against]),
  ['least squares of a weigh sheet', String(weighingCases.length), atMost(weighingCases.map((task) => shareOff(fitAgainstQuadprog(task)))), '1e-9 of them', `quadprog on random tasks with limits (squares below 1e-11 count as that)`],
  ['least cost of a weigh sheet', String(weighingCases.length), atMost(weighingCases.map((task, i) => shareOff(costAgainstHighs(task, costTolerances[i % 3]!)))), '1e-9 of it', 'HiGHS on the same'],
);

const text = `# Accuracy

Every check value of the library, what its source says and what comes out. Written by \`npm run accuracy\`; the values stand in
\`tests/references/\`, and \`npm test\` runs them too. "seen" means that the value was read in the source itself.

${all.length} checks of ${values} values.

${table(['kind', 'checks', 'of these seen'], ...counts)}

${table(['folder', 'checks'], ...perFolder)}

## Conductivity against measurements

What is calculated less what was measured, as a share of it: natural waters of 0.5 to 5 mS/cm at 20 °C, and single salts of 1 to 20 mmol/kg.

${measured}

## Acid, saturation and weigh sheets against other programs

${claimed}

## Known disagreements

${known.length ? table(['check', 'reason'], ...known) : 'None.'}

## Checks

${sections.join('\n\n')}

## Sources

${[...cited].sort(([a], [b]) => (a < b ? -1 : 1)).map(([key, { citation, url }]) => `- **${key}**: ${citation}${url === undefined ? '' : ` <${url}>`}`).join('\n')}
`;

if (!process.argv.includes('--check')) {
  writeFileSync(page, text);
} else if (readFileSync(page, 'utf8') !== text) {
  wrong.push('docs/accuracy.md is not what this code gives: run `npm run accuracy`');
}
for (const one of wrong) console.error(`not as expected: ${one}`);
process.exitCode = wrong.length > 0 ? 1 : 0;
console.log(`${all.length} checks of ${values} values, ${known.length} known disagreements, ${wrong.length} not as expected`);
