import { findUnit, toAscii, type DimensionDefinition } from './dimension.js';
import { isQuantity, quantityIn, type Dimension, type Quantity } from './quantity.js';

/** Why a value is not a quantity of the dimension asked for. */
export interface ReadingProblem {
  readonly expected: string;
  readonly hint?: string | undefined;
  /** What came, where that says more than the value itself. */
  readonly received?: string;
}

/** A decimal number. */
export const numberForm = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;
const longest = 64;

/** A quantity of a dimension from a text or another quantity, or what is wrong with it. */
export function readQuantity<Name extends Dimension>(definition: DimensionDefinition<Name>, value: unknown): Quantity<Name> | ReadingProblem {
  if (typeof value === 'string') return readText(definition, value);
  if (isQuantity(value)) {
    if (value.dimension === definition.name) return value as Quantity<Name>;
    return { expected: expectation(definition), hint: `this quantity is of dimension ${value.dimension}` };
  }
  if (typeof value === 'number') return { expected: expectation(definition), hint: unitMissing(definition, Number.isFinite(value) ? value : 1) };
  return { expected: expectation(definition) };
}

/** Whether a reading succeeded. */
export const isRead = <Q extends Quantity<Dimension>>(reading: Q | ReadingProblem): reading is Q => !('expected' in reading);

function readText<Name extends Dimension>(definition: DimensionDefinition<Name>, written: string): Quantity<Name> | ReadingProblem {
  const text = definition.rewrite?.(written) ?? written;
  const gap = text.indexOf(' ');
  const number = text.slice(0, gap);
  const unit = gap > 0 && text.length <= longest ? findUnit(definition, text.slice(gap + 1)) : undefined;
  if (unit && numberForm.test(number)) {
    const amount = Number(number);
    return Number.isFinite(amount) ? quantityIn(definition, amount, unit) : { expected: expectation(definition), hint: 'too large a number' };
  }
  return { expected: expectation(definition), hint: hintFor(definition, text) };
}

const unitMissing = (definition: DimensionDefinition, number: number | string): string => `the unit is missing, as in '${number} ${firstUnit(definition)}'`;

const firstUnit = (definition: DimensionDefinition): string => Object.keys(definition.units)[0]!;

const expectation = (definition: DimensionDefinition): string => `a number, a space and a unit (${Object.keys(definition.units).slice(0, 6).join(', ')} …)`;

/** A hint that names what was perhaps meant; none without a candidate. */
export const suggest = (texts: readonly string[]): string | undefined =>
  texts.length === 0 ? undefined : `did you mean ${texts.map((text) => `'${text}'`).join(' or ')}?`;

/** What the writer of a text most likely meant. Never a silent correction: only words. */
function hintFor(definition: DimensionDefinition, text: string): string | undefined {
  const [, number, gap, unit] = (text.length <= longest && /^\s*([+-]?[\d.,]*\d(?:[eE][+-]?\d+)?)(\s*)(.*?)\s*$/.exec(text)) || [];
  if (number === undefined || unit === undefined) return undefined;
  if (unit === '') return unitMissing(definition, number);
  const withUnit = (...numbers: readonly string[]): string | undefined => suggest(numbers.map((one) => `${one} ${unit}`));
  if (number.includes(',')) {
    const point = number.replace(',', '.');
    return /^[+-]?\d{1,3}(,\d{3})+$/.test(number) ? withUnit(number.replaceAll(',', ''), point) : withUnit(point);
  }
  if (findUnit(definition, unit)) return gap === ' ' ? undefined : withUnit(number);
  const wanted = ` ${toAscii(unit.replace('gpm', 'gal/min').replace('gph', 'gal/h'))}`.toLowerCase();
  const near = Object.keys(definition.units).filter((symbol) => ` ${toAscii(symbol)}`.toLowerCase().endsWith(wanted));
  if (near.length > 0) return suggest(near.map((symbol) => `${number} ${symbol}`));
  if (/abs|psia/.test(unit)) return 'absolute pressure: subtract the atmosphere';
  if (/gauge|psig/.test(unit)) return 'gauge pressure: add the atmosphere';
  return `'${unit}' is not a unit of ${definition.name}`;
}
