import { dot, extend, split, type OrthogonalBasis } from '../../numerics/orthogonal-basis.js';
import { pushing, type BestMix } from './best-mix.js';
import type { FeedForm } from './label-analysis.js';
import type { MixLimit, MixProblem } from './mix-problem.js';

/** A miss of less than this share of a target is none. */
const smallestMiss = 0.001;

/** Wishes that cannot be met together. */
export interface Conflict {
  /** Forms that come to less than is wanted. */
  readonly short: readonly FeedForm[];
  /** Forms that come to more. */
  readonly over: readonly FeedForm[];
  /** Products that tie them: what brings one changes the other. */
  readonly products: readonly string[];
  /** Limits in the way, by the inputs that they come from. */
  readonly limits: readonly string[];
}

/** Something that pulls at the mix: a target that is missed, or a limit. */
interface Pull {
  /** What each product does to it. */
  readonly effects: readonly number[];
  readonly form?: FeedForm | undefined;
  readonly side?: 'short' | 'over' | undefined;
  readonly limit?: string;
}

/**
 * Which wishes stand against which.
 *
 * At the best fit the misses balance: what a product would do for one form it does against another or against a limit that pushes back
 * (multiplier above zero). Misses and limits that one product touches belong together; each such part is a conflict, and shows that no
 * mix does better. Limits that cannot be kept together come first.
 */
export function conflictsOf({ names, forms, rows, right, weights }: MixProblem, { fit, limits, missed, holding }: BestMix): readonly Conflict[] {
  const holder = ({ normal, name }: MixLimit): Pull => ({ effects: normal, limit: name });
  const limitsMissed = missed.map((limit): Pull => ({ ...holder(limit), form: limit.form, side: limit.side === 'most' ? 'over' : 'short' }));
  const targetsMissed = rows.flatMap((effects, i): Pull[] => {
    const miss = (dot(effects, fit.values) - right[i]!) / weights[i]!;
    return Math.abs(miss) > smallestMiss ? [{ effects, form: forms[i], side: miss > 0 ? 'over' : 'short' }] : [];
  });
  return [...parts([...limitsMissed, ...holding.map(holder)], names), ...parts([...targetsMissed, ...pushing(limits, fit).map(holder)], names)];
}

function parts(pulls: readonly Pull[], names: readonly string[]): Conflict[] {
  let groups: Pull[][] = [];
  for (const pull of pulls) {
    const touching = groups.filter((group) => group.some((other) => names.some((_, j) => pull.effects[j] !== 0 && other.effects[j] !== 0)));
    groups = [...groups.filter((group) => !touching.includes(group)), [...touching.flat(), pull]];
  }
  return groups.flatMap((group) => {
    const ties = names.filter((_, j) => group.filter(({ effects }) => effects[j] !== 0).length > 1);
    const forms = (side: Pull['side']) => group.flatMap((pull) => (pull.form !== undefined && pull.side === side ? [pull.form] : [])).sort();
    const limits = group.flatMap(({ limit }) => (limit === undefined ? [] : [limit])).sort();
    return ties.length > 0 && group.some(({ side }) => side !== undefined) ? [{ short: forms('short'), over: forms('over'), products: ties, limits }] : [];
  });
}

/**
 * Products that can stand in for one another without a change in the fit: there is another mix that meets targets and limits just as well.
 *
 * They are the columns in use that take part in a direction which no target and no pushing limit sees.
 */
export function interchangeableProducts({ names, rows }: MixProblem, { fit, limits }: BestMix): readonly string[] {
  const used = names.flatMap((_, j) => (fit.values[j]! > 1e-9 ? [j] : []));
  const seen: OrthogonalBasis = { basis: [], triangle: [] };
  for (const row of [...rows, ...pushing(limits, fit).map(({ normal }) => normal)]) {
    const effects = used.map((j) => row[j]!);
    const length = Math.sqrt(dot(effects, effects));
    if (length === 0) continue;
    const rests = split(effects.map((x) => x / length), seen.basis);
    if (dot(rests.rest, rests.rest) > 1e-18) extend(seen, rests);
  }
  return used.flatMap((j, place) => (1 - seen.basis.reduce((sum, direction) => sum + direction[place]! ** 2, 0) > 1e-9 ? [names[j]!] : []));
}
