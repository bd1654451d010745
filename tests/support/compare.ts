/** Compares one expected value of a check with what came, and refuses what cannot be compared. */

export type Expected = number | string | boolean;

export interface Comparison {
  /** Where in the result; empty for the result itself. */
  readonly path: string;
  readonly expected: string;
  readonly got: string;
  /** Got less expected, as text; empty where both are words. */
  readonly error: string;
  readonly tolerance: string;
  readonly agrees: boolean;
  /** Size of the error, in the unit of the expected value and as a share of it; undefined where both are words or must be equal. */
  readonly miss?: { readonly absolute: number; readonly share: number };
}

interface WithUnit {
  in(unit: string): number | ArrayLike<number>;
}
const hasUnit = (value: unknown): value is WithUnit => typeof (value as Partial<WithUnit> | null | undefined)?.in === 'function';

/** '2.984 kPa' -> number and unit; undefined for plain words. */
function readAmount(text: string): { value: number; unit: string } | undefined {
  const space = text.indexOf(' ');
  const value = Number(text.slice(0, space));
  return space > 0 && !Number.isNaN(value) ? { value, unit: text.slice(space + 1) } : undefined;
}

/** The value at a path such as `emitters[0].head`, in the unit where one is expected; a step into a column is a number of the column in that unit. */
function valueAt(result: unknown, path: string, unit: string | undefined): unknown {
  const inUnit = (value: WithUnit) => value.in(unit!);
  let value = result;
  let converted = unit === undefined;
  for (const key of path.match(/[^.[\]]+/g) ?? []) {
    if (!converted && hasUnit(value) && /^\d+$/.test(key)) {
      value = inUnit(value);
      converted = true;
    }
    if (value === null || typeof value !== 'object' || !Object.hasOwn(value, key)) throw new Error(`the result has nothing at '${path}' (no '${key}')`);
    value = (value as Record<string, unknown>)[key];
  }
  if (converted) return value;
  if (!hasUnit(value)) throw new Error(`'${path}' is no quantity to show in ${unit}: ${JSON.stringify(value)}`);
  return inUnit(value);
}

/** Absolute tolerance, in the unit of the expected value. */
function absolute(tolerance: number | string, expected: number, unit: string | undefined): number {
  if (typeof tolerance === 'number') return tolerance;
  const amount = readAmount(tolerance);
  if (amount?.unit === '%') return (Math.abs(expected) * amount.value) / 100;
  if (amount?.unit === unit && amount !== undefined) return amount.value;
  throw new Error(`the tolerance '${tolerance}' is not in ${unit ?? 'plain numbers'}: give a number, 'x %' of the value, or the same unit`);
}

/** A number to two digits of its tolerance, so that the text is the same on every machine. */
function printed(value: number, tolerance: number): string {
  const decimals = 1 - Math.floor(Math.log10(tolerance));
  if (Math.abs(value) < 0.5 * 10 ** -decimals) return '0';
  if (decimals <= 9) return value.toFixed(Math.max(decimals, 0));
  return value.toExponential(Math.max(decimals + Math.floor(Math.log10(Math.abs(value))), 0));
}

/**
 * Compares the value at a path of a result. A tolerance is a number (in the unit of the expected value), a share of the expected value
 * ('0.05 %'), or a quantity in the expected unit. Only whole numbers and words may be expected exactly.
 */
export function compare(result: unknown, path: string, expected: Expected, tolerance: number | string | undefined): Comparison {
  const amount = typeof expected === 'string' ? readAmount(expected) : undefined;
  const got = valueAt(result, path, amount?.unit);
  const wanted = amount?.value ?? expected;
  if (typeof wanted !== 'number') {
    if (tolerance !== undefined) throw new Error(`'${path}': words take no tolerance`);
    return { path, expected: String(wanted), got: String(got), error: '', tolerance: 'exact', agrees: got === wanted };
  }
  if (typeof got !== 'number') throw new Error(`'${path}' is no number: ${JSON.stringify(got)}`);
  if (!Number.isFinite(got) || !Number.isFinite(wanted)) throw new Error(`'${path}' is not finite: got ${got}, expected ${wanted}`);
  const unit = amount ? ` ${amount.unit}` : '';
  if (tolerance === undefined) {
    if (!Number.isInteger(wanted)) throw new Error(`'${path}': a value that is not whole needs a tolerance`);
    return { path, expected: String(expected), got: got + unit, error: got === wanted ? '0' : String(got - wanted), tolerance: 'exact', agrees: got === wanted };
  }
  const width = absolute(tolerance, wanted, amount?.unit);
  if (!(width > 0 && width < Infinity)) throw new Error(`'${path}': the tolerance ${tolerance} is not above zero`);
  const error = got - wanted;
  return {
    path,
    expected: String(expected),
    got: printed(got, width) + unit,
    error: printed(error, width),
    tolerance: String(tolerance),
    agrees: Math.abs(error) <= width,
    miss: { absolute: Math.abs(error), share: Math.abs(error / wanted) },
  };
}
