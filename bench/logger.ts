import Papa from 'papaparse';
import type * as logger from '../src/logger/index.js';
import { agreeWithin, built, type Comparison } from './comparison.js';

const { readLoggerText } = await built<typeof logger>('logger');

const rows = 1_000_000;

/** A reading a minute, as a logger writes it. */
function file(): string {
  const lines = ['time,Temp (°C),RH (%),PPFD (µmol/m²/s)'];
  for (let i = 0; i < rows; i++) {
    const stamp = new Date(Date.UTC(2024, 0, 1, 0, i)).toISOString().slice(0, 19).replace('T', ' ');
    lines.push(`${stamp},${(10 + (i % 200) / 10).toFixed(1)},${(40 + (i % 97) / 2).toFixed(1)},${i % 900}`);
  }
  return lines.join('\n');
}

/** The parser row by row, each dropped after use: its fastest way, as keeping a million rows costs it twice the time. */
function rowsOf(text: string, take: (row: string[]) => void): void {
  Papa.parse<string[]>(text, { delimiter: ',', newline: '\n', step: ({ data }) => take(data) });
}

export function loggerComparison(): Comparison {
  const text = file();
  return {
    name: `${rows} rows of a logger's file`,
    ours: { name: 'readLoggerText: checked columns', run: () => readLoggerText(text) },
    theirs: { name: 'papaparse: rows of texts', run: () => rowsOf(text, () => undefined) },
    limit: { atMost: 1.5 },
    agree: () => {
      const { columns } = readLoggerText(text);
      let sum = 0;
      rowsOf(text, (row) => (sum += Number(row[2]) || 0));
      agreeWithin(1e-9, columns.relativeHumidity!.in('%').reduce((total, one) => total + one, 0), sum);
    },
  };
}
