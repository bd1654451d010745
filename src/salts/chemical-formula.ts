import { atomicWeights, type Element } from '../solution/atomic-weights.js';
import type { Composition } from '../solution/ions.js';

/** Where and why a formula cannot be read. */
export interface FormulaProblem {
  readonly ok: false;
  /** Characters before the one that is in the way. */
  readonly position: number;
  readonly message: string;
}

/** A formula taken apart. */
export interface FormulaReading {
  readonly ok: true;
  readonly composition: Composition;
  /** Molecules of water of crystallisation: the parts written `·nH2O` behind a salt. */
  readonly water: number;
}

/** Longest formula read, in characters. */
const longestFormula = 200;
/** Most brackets within brackets. */
const deepestBracket = 10;
/** Largest subscript or multiplier. */
const largestCount = 9999;

const loweredDigits = '₀₁₂₃₄₅₆₇₈₉';
const separators = '·⋅∙•.*';
const brackets = '([{';
const closings = ')]}';

/**
 * Reads a chemical formula: `KNO3`, `Ca(NO₃)₂·4H₂O`, `5Ca(NO3)2.NH4NO3.10H2O`, `CaSO4*0.5H2O`.
 *
 * Brackets of three kinds nest; subscripts are plain or lowered digits; parts are joined by a dot of any kind or `*`, with or without
 * spaces around it, and each may open with a multiplier, whole or ending in a half (`1.5H2O`). Elements are those of the table of atomic
 * weights. Reads once from left to right, so the time it takes grows with the length of the text, and never throws.
 *
 * @example
 * parseChemicalFormula('Ca(NO3)2·4H2O'); // => { ok: true, composition: { Ca: 1, N: 2, O: 10, H: 8 }, water: 4 }
 * parseChemicalFormula('K2(SO4'); // => { ok: false, position: 2, message: 'this bracket is not closed' }
 */
export function parseChemicalFormula(text: string): FormulaReading | FormulaProblem {
  if (text.length > longestFormula) return problem(longestFormula, `a formula has at most ${longestFormula} characters`);
  const total: Atoms = new Map();
  let water = 0;
  let at = skipSpaces(text, 0);
  for (let first = true; ; first = false) {
    const multiplier = readMultiplier(text, at);
    if ('ok' in multiplier) return multiplier;
    const part = readPart(text, multiplier.end);
    if ('ok' in part) return part;
    add(total, part.value, multiplier.value);
    if (!first && part.value.size === 2 && part.value.get('H') === 2 && part.value.get('O') === 1) water += multiplier.value;
    at = skipSpaces(text, part.end);
    if (at === text.length) return { ok: true, composition: Object.fromEntries(total), water };
    if (!separators.includes(text[at]!)) return unexpected(text, at);
    at = skipSpaces(text, at + 1);
  }
}

/** Composition of a formula that is known to be right; throws a SyntaxError that says where it is not. */
export function compositionOfFormula(text: string): Composition {
  const reading = parseChemicalFormula(text);
  if (reading.ok) return reading.composition;
  throw new SyntaxError(`formula '${text.slice(0, longestFormula)}', character ${reading.position + 1}: ${reading.message}`);
}

type Atoms = Map<Element, number>;
type Read<T> = { readonly value: T; readonly end: number } | FormulaProblem;

function problem(position: number, message: string): FormulaProblem {
  return { ok: false, position, message };
}

function unexpected(text: string, at: number): FormulaProblem {
  if (at >= text.length) return problem(at, 'an element symbol is missing here');
  const character = String.fromCodePoint(text.codePointAt(at)!);
  if ('+-−^⁺⁻'.includes(character)) return problem(at, 'a salt carries no charge: leave it out');
  if (/[a-z]/.test(character)) return problem(at, `'${character}': the symbol of an element starts with a capital letter`);
  return problem(at, `'${character}' cannot stand here`);
}

function skipSpaces(text: string, start: number): number {
  let at = start;
  while (text[at] === ' ') at++;
  return at;
}

function add(sum: Atoms, atoms: Atoms, times: number): void {
  for (const [element, count] of atoms) sum.set(element, (sum.get(element) ?? 0) + count * times);
}

/** Whole number at `start`: 1 where there is none. */
function readCount(text: string, start: number): Read<number> {
  let value = 0;
  let end = start;
  for (; end < text.length; end++) {
    const character = text[end]!;
    const digit = character >= '0' && character <= '9' ? Number(character) : loweredDigits.indexOf(character);
    if (digit < 0) break;
    value = value * 10 + digit;
    if (value > largestCount) return problem(start, `a count is at most ${largestCount}`);
  }
  return { value: end === start ? 1 : value, end };
}

function readMultiplier(text: string, start: number): Read<number> {
  const whole = readCount(text, start);
  if ('ok' in whole) return whole;
  const half = whole.end > start && text.startsWith('.5', whole.end);
  const value = whole.value + (half ? 0.5 : 0);
  return value > 0 ? { value, end: skipSpaces(text, whole.end + (half ? 2 : 0)) } : problem(start, 'a count is at least 1');
}

/** One part between separators: elements and brackets, each with its subscript. */
function readPart(text: string, start: number): Read<Atoms> {
  const groups: { readonly atoms: Atoms; readonly closing: string; readonly opened: number }[] = [];
  let atoms: Atoms = new Map();
  let at = start;
  while (at < text.length && text[at] !== ' ' && !separators.includes(text[at]!)) {
    const character = text[at]!;
    if (brackets.includes(character)) {
      if (groups.length === deepestBracket) return problem(at, `at most ${deepestBracket} brackets within brackets`);
      groups.push({ atoms, closing: closings[brackets.indexOf(character)]!, opened: at });
      atoms = new Map();
      at++;
      continue;
    }
    const group = groups.at(-1);
    let inner = atoms;
    if (group !== undefined && character === group.closing) {
      if (atoms.size === 0) return unexpected(text, at);
      atoms = group.atoms;
      groups.pop();
      at++;
    } else {
      if (character < 'A' || character > 'Z') return unexpected(text, at);
      const second = text[at + 1] ?? '';
      const symbol = second >= 'a' && second <= 'z' ? character + second : character;
      if (!Object.hasOwn(atomicWeights, symbol)) return problem(at, `there is no atomic weight for '${symbol}'`);
      inner = new Map([[symbol as Element, 1]]);
      at += symbol.length;
    }
    const count = readCount(text, at);
    if ('ok' in count) return count;
    if (count.value === 0) return problem(at, 'a count is at least 1');
    add(atoms, inner, count.value);
    at = count.end;
  }
  const open = groups.at(-1);
  if (open !== undefined) return problem(open.opened, 'this bracket is not closed');
  return atoms.size === 0 ? unexpected(text, at) : { value: atoms, end: at };
}
