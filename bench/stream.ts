import type * as logger from '../src/logger/index.js';
import type * as vapour from '../src/vapour/index.js';
import { built } from './comparison.js';

const { loggerBlocks } = await built<typeof logger>('logger');
const { newAirRecord } = await built<typeof vapour>('vapour');

const [rows, rowsOfChunk] = [10_000_000, 20_000] as const;

/** A reading a minute for nineteen years, as a file comes: in pieces of text. */
function* file(): Generator<string> {
  yield 'minutes (min),Temp (°C),RH (%)\n';
  for (let from = 0; from < rows; from += rowsOfChunk) {
    let text = '';
    for (let i = from; i < from + rowsOfChunk; i++) text += `${i},${(10 + (i % 200) / 10).toFixed(1)},${(40 + (i % 97) / 2).toFixed(1)}\n`;
    yield text;
  }
}

const held = (): number => {
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return heapUsed + arrayBuffers;
};

/** A file too long for memory, read and summed up block by block: how long it takes, s, and the most memory that it holds meanwhile, MB. */
export async function streamed(): Promise<{ readonly rows: number; readonly seconds: number; readonly megabytes: number }> {
  const before = held();
  const begin = performance.now();
  const record = newAirRecord({ deficitBands: [200, 1000] });
  const blocks = loggerBlocks(file(), { columns: { readingTime: 'minutes', airTemperature: 'Temp', relativeHumidity: 'RH' } });
  let [seen, most] = [0, before];
  for await (const { rows: read, columns } of blocks) {
    record.add({ readingTime: columns.readingTime.si, airTemperature: columns.airTemperature.si, relativeHumidity: columns.relativeHumidity.si });
    seen += read;
    most = Math.max(most, held());
  }
  if (seen !== rows || record.result().whole!.coveredTime !== (rows - 1) * 60) throw new Error(`not all of it was read: ${seen} rows`);
  return { rows, seconds: (performance.now() - begin) / 1000, megabytes: (most - before) / 1e6 };
}
