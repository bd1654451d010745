import { twoDoubles, type Conversion, type Ratio } from './exact.js';
import { lazily } from './lazily.js';

/** How a unit is defined: `SI number = x · ratio (+ offset)`. */
export type UnitRow = Ratio | readonly [numerator: bigint, denominator: bigint, offset: Ratio];

/** One unit of one dimension, with its exact definition. */
export interface Unit {
  readonly symbol: string;
  readonly row: UnitRow;
  /** From this unit to the SI number of its dimension. */
  readonly toSI: Conversion;
  /** From the SI number to this unit. */
  readonly fromSI: Conversion;
  /** To other units of the dimension, as far as they were needed. */
  readonly to: Map<Unit, Conversion>;
}

/** A symbol written with the characters of a plain keyboard: µ as u, ² as 2, ³ as 3, · as *, ° as deg. */
export type Ascii<Text extends string> = Text extends `${infer Before}µ${infer After}` ? Ascii<`${Before}u${After}`>
  : Text extends `${infer Before}²${infer After}` ? Ascii<`${Before}2${After}`>
    : Text extends `${infer Before}³${infer After}` ? Ascii<`${Before}3${After}`>
      : Text extends `${infer Before}·${infer After}` ? Ascii<`${Before}*${After}`>
        : Text extends `${infer Before}°${infer After}` ? Ascii<`${Before}deg${After}`>
          : Text;

/** A physical dimension with its units and the other ways to write them. */
export interface DimensionDefinition<Name extends string = string, Symbol extends string = string, Alias extends string = string> {
  readonly name: Name;
  /** The first symbol is the one that results are shown in unless a calculation says otherwise. */
  readonly units: { readonly [S in Symbol]: UnitRow };
  readonly aliases: { readonly [A in Alias]: Symbol };
  /** A form of its own beside number and unit: the same as number and unit, or undefined where a text is not of it. */
  readonly rewrite?: ((text: string) => string | undefined) | undefined;
  /** Every unit by each of the ways it may be written. Worked out at first use. */
  readonly spelled: () => ReadonlyMap<string, Unit>;
}

/** Makes a dimension. */
export function dimension<const Name extends string, const Symbol extends string, const Alias extends string = never>(
  name: Name,
  units: { readonly [S in Symbol]: UnitRow },
  aliases: { readonly [A in Alias]: NoInfer<Symbol> } = {} as never,
  rewrite?: (text: string) => string | undefined,
): DimensionDefinition<Name, Symbol, Alias> {
  return { name, units, aliases, rewrite, spelled: lazily(() => spellings(units, aliases)) };
}

const asciiOf: Readonly<Record<string, string>> = { 'µ': 'u', 'μ': 'u', '²': '2', '³': '3', '·': '*', '°': 'deg' };

/** Rewrites a unit text with plain-keyboard characters. */
export const toAscii = (text: string): string => text.replace(/[µμ²³·°]/g, (mark) => asciiOf[mark]!);

/** A conversion from one unit to another as one exact affine map. */
export function conversionBetween(from: UnitRow, to: UnitRow): Conversion {
  const [fromN, fromD, fromOffset = [0n, 1n]] = from;
  const [toN, toD, toOffset = [0n, 1n]] = to;
  return {
    scale: twoDoubles([fromN * toD, fromD * toN]),
    offset: twoDoubles([(fromOffset[0] * toOffset[1] - toOffset[0] * fromOffset[1]) * toD, fromOffset[1] * toOffset[1] * toN]),
  };
}

const SI: UnitRow = [1n, 1n];

function spellings(rows: Readonly<Record<string, UnitRow>>, aliases: Readonly<Record<string, string>>): ReadonlyMap<string, Unit> {
  const units = new Map<string, Unit>();
  for (const [symbol, row] of Object.entries(rows)) {
    units.set(symbol, { symbol, row, toSI: conversionBetween(row, SI), fromSI: conversionBetween(SI, row), to: new Map() });
  }
  for (const [alias, symbol] of Object.entries(aliases)) units.set(alias, units.get(symbol)!);
  for (const [written, unit] of [...units]) units.set(toAscii(written), unit);
  return units;
}

/** The unit written so, or undefined. */
export const findUnit = ({ spelled }: DimensionDefinition, written: string): Unit | undefined => spelled().get(written) ?? spelled().get(toAscii(written));

/** The conversion from one unit to another of the same dimension. Worked out at first use. */
export function conversionTo(from: Unit, to: Unit): Conversion {
  let conversion = from.to.get(to);
  if (!conversion) from.to.set(to, (conversion = conversionBetween(from.row, to.row)));
  return conversion;
}
