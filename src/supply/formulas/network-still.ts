/** Water that stands shut in between closed links. */
import { driveOf } from './network-miss.js';
import { shut } from './network-curves.js';
import type { NetworkState, Parts } from './network-parts.js';
import { groupsOf } from './network-unfed.js';

/** Heads are not lowered by less than this, m, and not more often than so. */
const [leastDrop, mostRounds] = [1e-9, 100];

/**
 * Lowers the heads of what closed links shut in, which may stand anywhere above those that hold them closed, to the lowest of these: a pump brings
 * it to its shut-off head and no further. What nothing leads to stays as it is. Tells whether anything was lowered.
 */
export function lowerStill({ from, to, curves, isFree }: Parts, { heads, closed }: NetworkState): boolean {
  const shutting = curves.flatMap((curve, link) => (closed[link] && curve !== shut && isFree[to[link]!] ? [link] : []));
  if (shutting.length === 0) return false;
  const { join, leaderOf } = groupsOf(heads.length);
  for (let link = 0; link < curves.length; link++) if (!closed[link]) join(from[link]!, to[link]!);
  const isKept = new Uint8Array(heads.length);
  for (let node = 0; node < heads.length; node++) if (!isFree[node]) isKept[leaderOf(node)] = 1;
  let hasMoved = false;
  for (let round = 0; round < mostRounds; round++) {
    const drops = new Map<number, number>();
    for (const link of shutting) {
      const [start, end, curve] = [from[link]!, to[link]!, curves[link]!];
      const group = leaderOf(end);
      if (isKept[group] || leaderOf(start) === group) continue;
      const spare = curve.loss(0) - driveOf(curve, heads[start]!, heads[end]!);
      drops.set(group, Math.min(spare, drops.get(group) ?? Infinity));
    }
    for (const [group, drop] of drops) if (!(drop > leastDrop)) drops.delete(group);
    if (drops.size === 0) break;
    hasMoved = true;
    for (let node = 0; node < heads.length; node++) heads[node]! -= drops.get(leaderOf(node)) ?? 0;
  }
  return hasMoved;
}
