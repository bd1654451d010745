import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isInputError } from '../../src/calculation/index.js';
import { loggerBlocks, readLogger, readLoggerText, type LoggerSource } from '../../src/logger/index.js';

const text = '\uFEFFTeaching garden\r\ntime;Temp (°C);RH (%);remark\r\n2026-04-12 08:00;18,5;81;"vent\r\nopen; ""wide"""\r\n2026-04-12 08:10;x;80;\r\n\r\n2026-04-12 08:20;19;\r\n2026-04-12 08:30;19,5;79;µ';
const bytes = new TextEncoder().encode(text);
const plain = (read: object): unknown => JSON.parse(JSON.stringify(read));
const expected = plain(readLoggerText(text));

const inPieces = <Whole extends { slice(from: number, to: number): Whole; readonly length: number }>(whole: Whole, ...cuts: readonly number[]): Whole[] =>
  [0, ...cuts].map((from, i) => whole.slice(from, cuts[i] ?? whole.length));

describe('chunks', () => {
  test('the text itself is read as it should be', () => {
    expect(expected).toMatchObject({ rows: 4, remarks: [{ line: 1 }], problems: [{ kind: 'unreadable', line: 5 }, { kind: 'too-few-cells', line: 7 }] });
  });

  test('may end anywhere in a text', async () => {
    for (let cut = 0; cut <= text.length; cut++) expect(plain(await readLogger(inPieces(text, cut)))).toEqual(expected);
    expect(plain(await readLogger([...text]))).toEqual(expected);
  });

  test('may end anywhere in bytes', async () => {
    for (let cut = 0; cut <= bytes.length; cut++) expect(plain(await readLogger(inPieces(bytes, cut)))).toEqual({ ...(expected as object), encoding: 'utf-8' });
  });

  test('may end anywhere in a long text', async () => {
    const rows = Array.from({ length: 20_000 }, (_, i) => `${i},"${i % 30}",${i % 7 === 0 ? '"a\nb"' : ''}`).join('\n');
    const long = `elapsed (s),Temp (°C),remark\n${rows}\n`;
    const whole = plain(readLoggerText(long));
    for (const size of [1000, 65_535, 65_536, 65_537, 200_000]) {
      const cuts = Array.from({ length: Math.floor(long.length / size) }, (_, i) => (i + 1) * size);
      expect(plain(await readLogger(inPieces(long, ...cuts))), `${size}`).toEqual(whole);
    }
  });
});

describe('sources', () => {
  const stream = (...chunks: (string | Uint8Array)[]): ReadableStream<string | Uint8Array> => new ReadableStream({
    start(controller) {
      chunks.forEach((chunk) => controller.enqueue(chunk));
      controller.close();
    },
  });
  async function* later() {
    for (const piece of inPieces(bytes, 7, 90)) yield await Promise.resolve(piece);
  }
  const readerOnly = { getReader: () => stream(...inPieces(bytes, 40)).getReader() };

  test.each<[string, () => LoggerSource, string | undefined]>([
    ['a text', () => text, undefined], ['bytes', () => bytes, 'utf-8'], ['a stream of bytes', () => stream(...inPieces(bytes, 40)), 'utf-8'], ['a stream of text', () => stream(...inPieces(text, 40)), undefined],
    ['an async iterator', later, 'utf-8'], ['a stream that is no iterator', () => readerOnly, 'utf-8'], ['a list', () => [text], undefined],
  ])('%s', async (_, source, encoding) => {
    expect(plain(await readLogger(source()))).toEqual({ ...(expected as object), ...(encoding && { encoding }) });
  });

  test('the encoding is found or given', async () => {
    const latin = Uint8Array.from(text.replace('\uFEFF', ''), (letter) => letter.codePointAt(0)!);
    expect((await readLogger(latin)).encoding).toBe('windows-1252');
    expect((await readLogger(latin)).taken).toMatchObject([{ unit: '°C' }, { unit: '%' }]);
    const wide = new Uint8Array(Uint16Array.from(text, (letter) => letter.codePointAt(0)!).buffer);
    expect(plain(await readLogger(inPieces(wide, 33)))).toEqual({ ...(expected as object), encoding: 'utf-16le' });
    expect((await readLogger(latin, { encoding: 'iso-8859-1' })).rows).toBe(4);
    await expect(readLogger(latin, { encoding: 'garden' })).rejects.toThrow(/encoding: the name of an encoding/);
  });

  test.each([[7], [null], [undefined], [{}], [[7]], [[null]]])('%j is none', async (source) => {
    await expect(readLogger(source as never)).rejects.toSatisfy(isInputError);
  });

  test('a source that fails passes its own error on', async () => {
    async function* broken() {
      yield text;
      await Promise.reject(new Error('cable'));
    }
    await expect(readLogger(broken())).rejects.toThrow('cable');
  });
});

/** Collects garbage, so that memory shows what is held on to. */
function collect(): void {
  setFlagsFromString('--expose-gc');
  (runInNewContext('gc') as () => void)();
}

describe('blocks', () => {
  const rows = 150_000;
  function* lines() {
    yield 'elapsed (s),Temp (°C)\n';
    for (let i = 0; i < rows; i++) yield `${i},${(i % 400) / 10}\n`;
  }

  test('hold 65,536 rows and join to the whole', async () => {
    const blocks = loggerBlocks(lines());
    const [sizes, temperatures]: [number[], number[]] = [[], []];
    for await (const { rows, columns } of blocks) {
      sizes.push(rows);
      for (const one of columns.airTemperature!.in('°C')) temperatures.push(one);
    }
    expect(sizes).toEqual([65_536, 65_536, 18_928]);
    expect(temperatures).toEqual(Array.from({ length: rows }, (_, i) => (i % 400) / 10));
    expect(blocks.report()).toMatchObject({ rows, problems: [] });
  });

  test('do not grow in memory with the file', async () => {
    function* long() {
      yield 'elapsed (s),Temp (°C),RH (%)\n';
      for (let i = 0; i < 300_000; i++) yield `${i},${i % 1000 === 7 ? 'x' : (i % 400) / 10},80\n`;
    }
    const used = (): number => {
      const { heapUsed, arrayBuffers } = process.memoryUsage();
      return heapUsed + arrayBuffers;
    };
    const after: number[] = [];
    for await (const { rows } of loggerBlocks(long())) {
      expect(rows).toBeLessThanOrEqual(65_536);
      await new Promise(setImmediate);
      collect();
      after.push(used());
    }
    // Held on to, the numbers would be 7 MB and the text 4 MB. The least of two: the test's own garbage comes and goes.
    expect(Math.min(...after.slice(-2)) - Math.min(...after.slice(0, 2))).toBeLessThan(2e6);
  });

  test('strict stops at the block with the fault', async () => {
    const blocks = loggerBlocks(['time,Temp (°C)\n', '2026-04-12 08:00,x\n', '2026-04-12 08:10,18\n'], { strict: true });
    await expect((async () => { for await (const block of blocks) expect.unreachable(`${block.rows}`); })()).rejects.toSatisfy(isInputError);
  });

  test('a report before the first block is refused', () => {
    expect(() => loggerBlocks([text]).report()).toThrow(/nothing yet/);
  });
});

describe('any input', () => {
  const number = fc.oneof(fc.integer({ min: -30, max: 59 }), fc.double({ min: -30, max: 59, noNaN: true })).map((one) => one + 0); // not -0, which is written as 0
  const table = fc.array(fc.record({ seconds: fc.integer({ min: 1, max: 1e5 }), temperature: fc.option(number, { nil: null }), humidity: fc.integer({ min: 1, max: 100 }) }), { minLength: 1, maxLength: 60 });
  const style = fc.record({ separator: fc.constantFrom(',', ';', '\t'), comma: fc.boolean(), quoted: fc.boolean(), end: fc.constantFrom('\n', '\r\n', '\r'), closed: fc.boolean() });

  test('what is written comes back', () => {
    fc.assert(fc.property(table, style, (rows, { separator, comma, quoted, end, closed }) => {
      const put = (cell: string): string => (quoted || (comma && separator === ',') ? `"${cell}"` : cell);
      const write = (one: number | null): string => put(one === null ? '' : comma ? String(one).replace('.', ',') : String(one));
      let seconds = 0;
      const times = rows.map((row) => (seconds += row.seconds));
      const stamp = (at: number): string => new Date(Date.UTC(2026, 3, 12) + at * 1000).toISOString().slice(0, 19).replace('T', ' ');
      const lines = rows.map(({ temperature, humidity }, i) => [put(stamp(times[i]!)), write(temperature), write(humidity)].join(separator));
      const text = [['time', 'Temp (°C)', 'RH (%)'].join(separator), ...lines].join(end) + (closed ? end : '');
      const { columns, problems } = readLoggerText(text, { decimal: comma ? ',' : '.', separator: separator as ',', columns: { readingTime: 0, airTemperature: 1, relativeHumidity: { column: 2, placeholders: [] } } });
      const day = Math.floor(times[0]! / 86_400) * 86_400;
      expect([...columns.airTemperature.in('°C')]).toEqual(rows.map(({ temperature }) => temperature ?? NaN));
      expect([...columns.relativeHumidity.in('%')]).toEqual(rows.map(({ humidity }) => humidity));
      expect([...columns.readingTime.in('s')]).toEqual(times.map((at) => at - day));
      expect(problems.filter(({ kind }) => kind !== 'fraction-as-percent' && !kind.includes('as-celsius'))).toEqual([]);
    }));
  });

  test('nothing but an InputError comes of bytes and texts that mean nothing', async () => {
    const piece = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 40 }), fc.uint8Array({ maxLength: 40 }), fc.constantFrom('\n', '\r', '"', ';', ',', '\t', 'time,Temp (°C)\n', '2026-04-12 08:00,18\n', '04/12/2026 8:00 AM;1,5\n', '#', '46124.5', '-'),
    );
    await fc.assert(fc.asyncProperty(fc.array(piece, { maxLength: 12 }), async (pieces) => {
      try {
        const { rows, columns } = await readLogger(pieces);
        for (const column of Object.values(columns)) expect((column as { length: number }).length).toBe(rows);
      } catch (error) {
        if (!isInputError(error)) throw error;
      }
    }), { numRuns: 1000 });
  });

  test('rows around the fault are read, wherever it is', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 30 }).filter((line) => !/[\n\r]/.test(line)), fc.integer({ min: 0, max: 9 }), (fault, at) => {
      const lines = Array.from({ length: 10 }, (_, i) => `2026-04-12 08:0${i},1${i}`);
      lines.splice(at, 0, fault);
      const { columns } = readLoggerText(`time,Temp (°C)\n${lines.join('\n')}\n`);
      const read = [...columns.airTemperature!.in('°C')];
      for (let i = 0; i < 10; i++) expect(read).toContain(10 + i);
    }));
  });
});
