/** Prints, in one run, how fast this library is beside others: ratios, which hold on any machine, and the few times that are promised. Fails where a limit does not hold. */
import { readFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { Bench } from 'tinybench';
import type { Comparison, Contender } from './comparison.js';
import { conductivityComparisons } from './conductivity.js';
import { lateralComparisons } from './laterals.js';
import { loggerComparison } from './logger.js';
import { networkComparisons } from './network.js';
import { recirculationComparison } from './recirculation.js';
import { streamed } from './stream.js';
import { vapourComparisons } from './vapour.js';
import { weighOutComparisons } from './weigh-out.js';

interface Times {
  /** Shortest time of a run, ms: what the job takes when nothing else disturbs the machine. */
  readonly shortest: number;
  readonly median: number;
}

async function timesOf(contenders: readonly Contender[]): Promise<Times[]> {
  const bench = new Bench({ time: 700, warmupTime: 200, iterations: 5, warmupIterations: 1 });
  for (const [i, { run }] of contenders.entries()) bench.add(String(i), run);
  const tasks = await bench.run();
  return tasks.map(({ result }) => {
    if (!('latency' in result)) throw new Error(`no result: ${result.state}`, { cause: 'error' in result ? result.error : undefined });
    return { shortest: result.latency.min, median: result.latency.p50 };
  });
}

interface Row {
  readonly cells: readonly string[];
  readonly holds: boolean;
}

async function rowsOf({ name, ours, theirs, limit, median, agree }: Comparison): Promise<Row[]> {
  agree();
  const [our, their] = (await timesOf([ours, theirs])) as [Times, Times];
  const who = `${ours.name} / ${theirs.name}`;
  const row = (title: string, value: string, promise: string, holds: boolean, whose: string): Row => ({ cells: [title, value, promise, promise === '' ? '' : holds ? 'holds' : 'FAILS', whose], holds });
  const share = our.shortest / their.shortest;
  const ratio = limit && 'atMost' in limit
    ? row(name, `${share.toPrecision(3)} x as long`, `at most ${limit.atMost}`, share <= limit.atMost, who)
    : row(name, `${(1 / share).toPrecision(3)} x as fast`, limit ? `at least ${limit.atLeast}` : '', limit === undefined || 1 / share >= limit.atLeast, who);
  if (median === undefined) return [ratio];
  const took = our.median * 1000;
  return [ratio, row(`${name}, median`, `${took.toPrecision(3)} µs`, `at most ${median} µs`, took <= median, ours.name)];
}

const version = (name: string): string => (JSON.parse(readFileSync(`node_modules/${name}/package.json`, 'utf8')) as { version: string }).version;
const others = ['psychrolib', 'js-quantities', 'epanet-js', 'papaparse', 'quadprog'].map((name) => `${name} ${version(name)}`).join(', ');
console.log(`${cpus()[0]?.model ?? 'unknown processor'}, ${cpus().length} cores, node ${process.version}, ${others}`);

const rows: (readonly string[])[] = [['job', 'ratio or time', 'limit', '', 'ours / theirs']];
for (const comparison of [...vapourComparisons(), loggerComparison(), recirculationComparison(), ...(await lateralComparisons()), ...(await networkComparisons()), ...conductivityComparisons(), ...weighOutComparisons()]) {
  for (const { cells, holds } of await rowsOf(comparison)) {
    rows.push(cells);
    if (!holds) process.exitCode = 1;
  }
}
/** MB that a file streamed may hold at once, garbage and all; its columns alone would be 240. */
const mostHeld = 150;
const { rows: streamedRows, seconds, megabytes } = await streamed();
if (megabytes > mostHeld) process.exitCode = 1;
rows.push([`${streamedRows} rows streamed in ${seconds.toPrecision(3)} s, most memory held`, `${megabytes.toPrecision(3)} MB`, `at most ${mostHeld} MB`, megabytes > mostHeld ? 'FAILS' : 'holds', 'loggerBlocks into newAirRecord']);

const widths = rows[0]!.map((_, column) => Math.max(...rows.map((row) => row[column]!.length)));
for (const row of rows) console.log(row.map((cell, column) => cell.padEnd(widths[column]!)).join('  ').trimEnd());
