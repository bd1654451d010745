/** Prints, in one run, how fast this library is beside others: ratios, which hold on any machine, not times. Fails where a limit does not hold. */
import { readFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { Bench } from 'tinybench';
import type { Comparison, Contender } from './comparison.js';
import { lateralComparisons } from './laterals.js';
import { vapourComparisons } from './vapour.js';

/** Shortest time of a run, ms: what the job takes when nothing else disturbs the machine. */
async function shortest(contenders: readonly Contender[]): Promise<number[]> {
  const bench = new Bench({ time: 700, warmupTime: 200 });
  for (const [i, { run }] of contenders.entries()) bench.add(String(i), run);
  const tasks = await bench.run();
  return tasks.map(({ result }) => {
    if (!('latency' in result)) throw new Error(`no result: ${result.state}`, { cause: 'error' in result ? result.error : undefined });
    return result.latency.min;
  });
}

async function rowOf({ name, ours, theirs, limit, agree }: Comparison): Promise<{ cells: string[]; holds: boolean }> {
  agree();
  const [our, their] = (await shortest([ours, theirs])) as [number, number];
  const who = `${ours.name} / ${theirs.name}`;
  if (limit && 'atMost' in limit) {
    const holds = our / their <= limit.atMost;
    return { cells: [name, `${(our / their).toPrecision(3)} x as long`, `at most ${limit.atMost}`, holds ? 'holds' : 'FAILS', who], holds };
  }
  const holds = limit === undefined || their / our >= limit.atLeast;
  const claim = limit ? [`at least ${limit.atLeast}`, holds ? 'holds' : 'FAILS'] : ['', ''];
  return { cells: [name, `${(their / our).toPrecision(3)} x as fast`, ...claim, who], holds };
}

const version = (name: string): string => (JSON.parse(readFileSync(`node_modules/${name}/package.json`, 'utf8')) as { version: string }).version;
const others = ['psychrolib', 'js-quantities', 'epanet-js'].map((name) => `${name} ${version(name)}`).join(', ');
console.log(`${cpus()[0]?.model ?? 'unknown processor'}, ${cpus().length} cores, node ${process.version}, ${others}`);

const rows: string[][] = [['job', 'ratio', 'limit', '', 'ours / theirs']];
for (const comparison of [...vapourComparisons(), ...(await lateralComparisons())]) {
  const { cells, holds } = await rowOf(comparison);
  rows.push(cells);
  if (!holds) process.exitCode = 1;
}
const widths = rows[0]!.map((_, column) => Math.max(...rows.map((row) => row[column]!.length)));
for (const row of rows) console.log(row.map((cell, column) => cell.padEnd(widths[column]!)).join('  ').trimEnd());
