/** The readings of one column, row by row, with a watch on what cannot be true. */
import { conversionTo, type DimensionDefinition, type Unit } from '../units/dimension.js';
import { convert } from '../units/exact.js';
import { unitOf } from '../units/quantity.js';
import { writeNumber } from '../units/write.js';
import type { ValueColumn } from './columns.js';
import { isKnownColumn, knownColumns } from './known-columns.js';
import { isMissing, readNumber } from './number.js';
import { shown, type LoggerProblem, type Problems } from './problems.js';

/** Numbers that loggers write where there is no reading. In a column of temperature -40 is that too, and 85 °C what a sensor shows that has just been switched on. */
const usual = [-999, 9999, -9999, 99999, 32767, -32768, 65535];
const ofTemperature = [-999, 9999, -9999, 99999, 32767, -32768, 65535, 999, 850, -40, -127];

export interface ColumnReader {
  /** The reading of a row; NaN for none. */
  read(cell: string, line: number): number;
  /** Takes note of the readings of a block. */
  keep(readings: Float64Array): void;
  /** Empty cells so far. */
  missing(): number;
  /** What the column as a whole says against its unit. */
  judge(): LoggerProblem | undefined;
}

export function columnReader({ name, definition, unit, placeholders }: ValueColumn, mark: number, problems: Problems): ColumnReader {
  const isTemperature = definition.name === 'temperature';
  const [low, high] = limitsIn(definition, unit, name);
  const stand = placeholders ?? (isTemperature ? [...ofTemperature, unit.symbol === '°F' ? 185 : 85] : usual);
  const perhaps = placeholders === undefined && !isTemperature ? 999 : NaN;
  const isJudged = definition.name === 'share' || airLike.includes(name);
  // Between these nothing needs a second look.
  const quietLow = Math.max(low, ...stand.filter((one) => one < 0).map((one) => one + 1e-9));
  const quietHigh = Math.min(high, ...[...stand, perhaps].filter((one) => one >= 0).map((one) => one - 1e-9));
  let [missing, count, sum, lowest, highest] = [0, 0, 0, Infinity, -Infinity];

  const add = (kind: 'unreadable' | 'placeholder' | 'perhaps-placeholder' | 'impossible', cell: string, line: number, expected: string, hint?: string): void => {
    problems.add({ kind, line, column: name, expected, found: shown(cell.trim()), hint });
  };

  function tally(number: number): void {
    count++;
    sum += number;
    if (number < lowest) lowest = number;
    if (number > highest) highest = number;
  }

  function lookTwice(number: number, cell: string, line: number): number {
    if (Number.isNaN(number)) {
      if (isMissing(cell)) missing++;
      else add('unreadable', cell, line, 'a number', mark === 46 && /^\s*-?\d+,\d+\s*$/.test(cell) ? "a decimal comma? give decimal: ','" : undefined);
      return NaN;
    }
    const impossible = number < low || number > high;
    if (stand.includes(number) || (impossible && number === perhaps)) {
      add('placeholder', cell, line, 'a reading', impossible || placeholders ? 'it stands for a missing one' : 'it stands for a missing one; if it is true, give placeholders: [] with the column');
      return NaN;
    }
    if (impossible) {
      tally(number);
      add('impossible', cell, line, `a reading from ${writeNumber(low)} to ${writeNumber(high)} ${unit.symbol}`);
      return NaN;
    }
    if (number === perhaps) add('perhaps-placeholder', cell, line, 'a reading', 'it often stands for a missing one, but is kept; if it is not true, give placeholders: [999] with the column');
    return number;
  }

  const whole = (kind: LoggerProblem['kind'], expected: string, unit: string): LoggerProblem =>
    ({ kind, column: name, expected, found: `${writeNumber(lowest)} to ${writeNumber(highest)}`, hint: `give unit: '${unit}' with the column?` });

  function judge(): LoggerProblem | undefined {
    const mean = sum / count;
    if (definition.name === 'share' && unit.symbol === '%' && highest > 0 && highest <= 1 && (name === 'relativeHumidity' || highest < 1)) return whole('fraction-as-percent', 'readings in %, not fractions', 'fraction');
    if (name === 'relativeHumidity' && unit.symbol === 'fraction' && mean > 2) return whole('percent-as-fraction', 'fractions, not readings in %', '%');
    if (!airLike.includes(name)) return undefined;
    if (unit.symbol === '°C' && mean >= 40) return whole('fahrenheit-as-celsius', 'readings in °C, and no house is that hot', '°F');
    if (unit.symbol === '°F' && mean <= 32 && lowest >= 0 && highest <= 45) return whole('celsius-as-fahrenheit', 'readings in °F, and these are frost throughout', '°C');
    return undefined;
  }

  return {
    read(cell, line) {
      const number = readNumber(cell, mark);
      return number > quietLow && number < quietHigh ? number : lookTwice(number, cell, line);
    },
    keep(readings) {
      if (!isJudged) return;
      for (let i = 0; i < readings.length; i++) {
        const number = readings[i]!;
        if (!Number.isNaN(number)) tally(number);
      }
    },
    missing: () => missing,
    judge,
  };
}

/** What is possible in a column, in its unit. */
function limitsIn(definition: DimensionDefinition, unit: Unit, name: string): readonly [low: number, high: number] {
  if (!isKnownColumn(name)) return [-Infinity, Infinity];
  const [low, high, written] = knownColumns[name].limits;
  const conversion = conversionTo(unitOf(definition, written), unit);
  return [convert(low, conversion), convert(high, conversion)];
}

/** Temperatures that stay where plants live. */
const airLike: readonly string[] = ['airTemperature', 'leafTemperature', 'dewPoint', 'wetBulbTemperature', 'outsideTemperature'];
