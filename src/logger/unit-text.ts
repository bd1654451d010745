/** Units as the headers of loggers write them. */
import { dimensionNamed, dimensionNames } from '../units/by-name.js';
import type { Unit } from '../units/dimension.js';
import { toAscii } from '../units/dimension.js';
import { lazily } from '../units/lazily.js';
import type { Dimension } from '../units/quantity.js';

export interface UnitMeaning {
  readonly dimension: Dimension;
  readonly unit: Unit;
}

/** Other words for units, by their key. */
const words: Readonly<Record<string, string>> = {
  celsius: 'degC', Celsius: 'degC', degreesC: 'degC', degreescelsius: 'degC', DegC: 'degC', fahrenheit: 'degF', Fahrenheit: 'degF', DegF: 'degF', degreesF: 'degF', kelvin: 'K', Kelvin: 'K',
  '%rh': '%', '%RH': '%', 'RH%': '%', 'rh%': '%', '%rel': '%', '%relhum': '%', pct: '%', Percent: '%', secs: 's', mins: 'min', hrs: 'h',
};

/** A unit without the ways in which it can be written: `µmol m⁻² s⁻¹` and `µmol/(m²·s)` are `umol/m2/s`. */
function key(text: string): string {
  const plain = toAscii(text.replaceAll('º', '°').normalize('NFKC').replaceAll('−', '-').replaceAll(/[⋅∙•]/g, '·'));
  const flat = plain.replaceAll(/([a-z]+)\^?-(\d)/gi, (_, letters: string, power: string) => `/${letters}${power === '1' ? '' : power}`).replaceAll(/\^|\s|\*\*/g, '');
  const [top, ...under] = flat.replaceAll(/[*.]+\//g, '/').split('/');
  const parts = under.flatMap((part) => part.replaceAll(/[()]/g, '').replace(/^m2s$/, 'm2*s').split('*'));
  return [top!.replace(/\.$/, ''), ...parts.sort()].join('/');
}

const meanings = /* @__PURE__ */ lazily(() => {
  const table = new Map<string, UnitMeaning[]>();
  for (const dimension of dimensionNames()) {
    for (const [written, unit] of dimensionNamed(dimension).spelled()) {
      const found = table.get(key(written)) ?? [];
      if (!found.some((one) => one.unit === unit)) table.set(key(written), [...found, { dimension, unit }]);
    }
  }
  return table;
});

/** What a text can mean as a unit; several where dimensions share it, none where it is none. */
export function unitMeanings(text: string): readonly UnitMeaning[] {
  const written = key(text.trim());
  return written === '' ? [] : (meanings().get(words[written] ?? written) ?? []);
}

const isUnit = (text: string): boolean => unitMeanings(text).length > 0;

export interface HeaderParts {
  readonly name: string;
  readonly unit?: string;
}

/** The name and the unit in a header: `Temp (°C)`, `RH [%]`, `temperature/°C`, `PPFD µmol/m²/s`, `air_temp_degC`. */
export function headerParts(header: string): HeaderParts {
  const text = header.trim();
  if (isUnit(text)) return { name: '', unit: text };
  for (const [group, inside] of [...text.matchAll(/[([{]((?:[^()[\]{}]|\([^()]*\))*)[)\]}]/g)].reverse()) {
    if (isUnit(inside!)) return { name: text.replace(group, ' ').replaceAll(/\s+/g, ' ').trim(), unit: inside!.trim() };
  }
  for (const { index, 0: gap } of [...text.matchAll(/[\s,;:_]+(?:in\s+)?/g), ...text.matchAll(/\//g)]) {
    const unit = text.slice(index + gap.length);
    if (index > 0 && isUnit(unit)) return { name: text.slice(0, index).trim(), unit };
  }
  return { name: text };
}

/** The unit in a cell of a row of units, where it is one: `°C`, `[%]`, `(W/m²)`. */
export function unitCell(cell: string): string | undefined {
  const text = cell.trim().replace(/^[([{](.*)[)\]}]$/, '$1');
  return isUnit(text) ? text : undefined;
}
