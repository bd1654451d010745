import { conflictsBetween, type StockTrait } from './stock-traits.js';

/** A product that is to go into a stock tank. */
export interface StockPortion {
  readonly name: string;
  readonly traits: ReadonlySet<StockTrait>;
  /** What all of it is of what one tank can hold of it, a fraction; zero where that is without limit or not known. */
  readonly share: number;
}

/** How much of a product goes into a tank, a fraction of all of it. */
export interface Placement {
  readonly name: string;
  readonly fraction: number;
}

interface Tank {
  readonly traits: Set<StockTrait>;
  readonly placements: Placement[];
  load: number;
}

/**
 * Shares products out over stock tanks so that nothing meets that must not, in as few tanks as that takes.
 *
 * Products that conflict with others are given a tank by exhaustive search; the rest goes where most is left of what dissolves, taking the
 * shares of all products in a tank to add up. What passes what a tank holds is poured into another one beside it where that is
 * allowed, and into more of the tanks at hand where that helps. Works in the order of names, so the order given does not matter.
 *
 * @param available tanks at hand; the answer has more where conflicts ask for more
 * @example
 * const [calcium, sulfate] = [new Set(['calcium']), new Set(['sulfate'])];
 * allocateToTanks([{ name: 'a', traits: calcium, share: 0.1 }, { name: 'b', traits: sulfate, share: 0.2 }], 2).length // => 2
 */
export function allocateToTanks(portions: readonly StockPortion[], available: number): readonly (readonly Placement[])[] {
  const sorted = [...portions].sort((a, b) => b.share - a.share || (a.name < b.name ? -1 : 1));
  const homes = homesOf(sorted);
  const fewest = Math.max(1, ...[...homes.values()].map((tank) => tank + 1));
  let best = filled(sorted, homes, fewest);
  for (let count = fewest + 1; count <= available && heaviest(best) > 1; count++) {
    const wider = filled(sorted, homes, count);
    if (heaviest(wider) < heaviest(best)) best = wider;
  }
  return best.map(({ placements }) => placements).filter(({ length }) => length > 0);
}

const heaviest = (tanks: readonly Tank[]): number => Math.max(...tanks.map(({ load }) => load));

const conflicts = (one: ReadonlySet<StockTrait>, other: ReadonlySet<StockTrait>): boolean => conflictsBetween(one, other).length > 0;

/** Order in which products choose a tank, and the company that each likes: chelates go with calcium, acid and other trace elements with sulfate and phosphate. Common practice, no source. */
const preferences: readonly (readonly [trait: StockTrait, company: readonly StockTrait[]])[] = [
  ['calcium', []], ['phosphate', ['sulfate']], ['sulfate', ['phosphate']], ['acid', ['phosphate', 'sulfate']], ['chelate', ['calcium']], ['alkali', []],
  ['trace metal', ['sulfate', 'phosphate']], ['molybdate', ['sulfate', 'phosphate']], ['boron', ['sulfate', 'phosphate']],
];

/** Products that conflict with the same others and like the same company. */
interface Kind {
  readonly traits: ReadonlySet<StockTrait>;
  readonly rank: number;
  readonly names: readonly string[];
}

/** The tank of every product that conflicts with another or likes a company, by name: the fewest tanks in which nothing conflicts. */
function homesOf(portions: readonly StockPortion[]): ReadonlyMap<string, number> {
  const kinds = new Map<string, Kind>();
  for (const { name, traits } of portions) {
    const others = portions.filter((other) => other.name !== name && conflicts(traits, other.traits)).map((other) => other.name);
    const preference = preferences.findIndex(([trait]) => traits.has(trait));
    const rank = preference < 0 ? preferences.length : preference;
    if (others.length === 0 && !(preferences[rank]?.[1].length)) continue;
    const key = JSON.stringify([rank, others]);
    const kind = kinds.get(key);
    kinds.set(key, { traits: new Set([...(kind?.traits ?? []), ...traits]), rank, names: [...(kind?.names ?? []), name] });
  }
  const ordered = [...kinds.values()].sort((one, other) => one.rank - other.rank || (one.names[0]! < other.names[0]! ? -1 : 1));
  for (let count = ordered.length > mostSearched ? Infinity : 1; ; count++) {
    const tanks = coloured(ordered, count);
    if (tanks) return new Map(ordered.flatMap(({ names }, i) => names.map((name) => [name, tanks[i]!] as const)));
  }
}

/** Kinds up to which the fewest tanks are searched for; more, which no recipe has, take the first tank that fits. */
const mostSearched = 12;

/** A tank for every kind so that none meets one that it conflicts with; undefined where `count` tanks are too few. */
function coloured(kinds: readonly Kind[], count: number, chosen: readonly number[] = []): readonly number[] | undefined {
  const kind = kinds[chosen.length];
  if (!kind) return chosen;
  const company = preferences[kind.rank]?.[1] ?? [];
  const used = Math.max(-1, ...chosen) + 1;
  const open = Array.from({ length: Math.min(used + 1, count) }, (_, tank) => ({ tank, inside: kinds.filter((_, i) => chosen[i] === tank) }))
    .filter(({ inside }) => !inside.some(({ traits }) => conflicts(traits, kind.traits)))
    .map(({ tank, inside }) => ({ tank, isLiked: inside.some(({ traits }) => company.some((trait) => traits.has(trait))) }));
  for (const { tank } of [...open.filter(({ isLiked }) => isLiked), ...open.filter(({ isLiked }) => !isLiked)]) {
    const answer = coloured(kinds, count, [...chosen, tank]);
    if (answer) return answer;
  }
  return undefined;
}

/** The tanks filled: first what has a tank of its own, then the rest. */
function filled(portions: readonly StockPortion[], homes: ReadonlyMap<string, number>, count: number): readonly Tank[] {
  const tanks: readonly Tank[] = Array.from({ length: count }, () => ({ traits: new Set(), placements: [], load: 0 }));
  for (const { name, traits } of portions) for (const trait of homes.has(name) ? traits : []) tanks[homes.get(name)!]!.traits.add(trait);
  const put = (tank: Tank, { name, traits, share }: StockPortion, fraction: number): void => {
    for (const trait of traits) tank.traits.add(trait);
    tank.placements.push({ name, fraction });
    tank.load += share * fraction;
  };
  const isHomed = ({ name }: StockPortion): boolean => homes.has(name);
  for (const portion of [...portions.filter(isHomed), ...portions.filter((one) => !isHomed(one))]) {
    const free = tanks.filter(({ traits }) => !conflicts(traits, portion.traits));
    const besideAlkali = (tank: Tank): boolean => tank.traits.has('alkali') && !portion.traits.has('alkali');
    const open = free.every(besideAlkali) ? free : free.filter((tank) => !besideAlkali(tank)); // an alkali is left alone where that can be
    const home = tanks[homes.get(portion.name) ?? tanks.indexOf(open.reduce((least, tank) => (tank.load < least.load ? tank : least)))]!;
    const level = levelOf(open.map(({ load }) => load), portion.share);
    const lower = open.filter(({ load }) => load < level - 1e-12);
    if (home.load + portion.share <= 1 || lower.length < 2) {
      put(home, portion, 1);
      continue;
    }
    let left = 1;
    lower.forEach((tank, i) => {
      const fraction = i === lower.length - 1 ? left : (level - tank.load) / portion.share;
      left -= fraction;
      put(tank, portion, fraction);
    });
  }
  return tanks;
}

/** The level that loads come to when an amount is poured over them, the lowest first. */
function levelOf(loads: readonly number[], amount: number): number {
  const sorted = [...loads].sort((a, b) => a - b);
  let sum = amount;
  let level = Infinity;
  for (let i = 0; i < sorted.length && sorted[i]! < level; i++) {
    sum += sorted[i]!;
    level = sum / (i + 1);
  }
  return level;
}
