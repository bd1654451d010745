/** What of a network cannot have a head, or not one head. */
import type { Network, NetworkLink } from './network.js';

/** Nodes in groups, each at first a group of its own: `join` makes two groups one, `leaderOf` names the group of a node by one of its nodes. */
export function groupsOf(size: number): { readonly join: (one: number, other: number) => void; readonly leaderOf: (node: number) => number } {
  const leader = new Int32Array(size).map((_, node) => node);
  const leaderOf = (node: number): number => {
    let at = node;
    while (leader[at] !== at) {
      leader[at] = leader[leader[at]!]!;
      at = leader[at]!;
    }
    return at;
  };
  return { leaderOf, join: (one, other) => { leader[leaderOf(one)] = leaderOf(other); } };
}

/** The nodes that no links join to one whose head is kept, shut ones left out unless told otherwise. Which way links let water pass does not matter here. */
export function unfedNodes({ nodes, links }: Pick<Network, 'nodes' | 'links'>, joins = ({ kind }: NetworkLink): boolean => kind !== 'shut'): number[] {
  const { join, leaderOf } = groupsOf(nodes.length);
  for (const link of links) if (joins(link)) join(link.from, link.to);
  const isFed = new Uint8Array(nodes.length);
  nodes.forEach(({ head }, node) => {
    if (head !== undefined) isFed[leaderOf(node)] = 1;
  });
  const unfed: number[] = [];
  for (let node = 0; node < nodes.length; node++) if (!isFed[leaderOf(node)]) unfed.push(node);
  return unfed;
}

/** Lets water pass both ways. */
export const isTwoWay = ({ kind }: NetworkLink): boolean => kind === 'pipe' || kind === 'valve';

/** The nodes that no water can come to whatever the heads and with every valve open, as what leads there lets it pass the other way only. */
export function unreachedNodes({ nodes, links }: Pick<Network, 'nodes' | 'links'>): ReadonlySet<number> {
  const letsBothWays = (link: NetworkLink): boolean => isTwoWay(link) || link.kind === 'shut';
  const oneWay = links.filter((link) => !letsBothWays(link));
  let reached = nodes;
  for (;;) {
    const unreached = new Set(unfedNodes({ nodes: reached, links }, letsBothWays));
    const next = new Set(oneWay.filter(({ from, to }) => unreached.has(to) && !unreached.has(from)).map(({ to }) => to));
    if (next.size === 0) return unreached;
    reached = reached.map((node, i) => (next.has(i) ? { ...node, head: 0 } : node));
  }
}

/** A pipe that loses nothing and closes a ring of such pipes, or a way of them between kept heads: what flows there could be anything. */
export function losslessRing({ nodes, links }: Pick<Network, 'nodes' | 'links'>): number | undefined {
  const isLossless = (link: NetworkLink): boolean => link.kind === 'pipe' && link.length === 0 && !link.lossCoefficient;
  if (!links.some(isLossless)) return undefined;
  const { join, leaderOf } = groupsOf(nodes.length);
  const kept = nodes.findIndex(({ head }) => head !== undefined);
  nodes.forEach(({ head }, node) => { if (head !== undefined) join(node, kept); });
  const ring = links.findIndex((link) => {
    if (!isLossless(link)) return false;
    if (leaderOf(link.from) === leaderOf(link.to)) return true;
    join(link.from, link.to);
    return false;
  });
  return ring < 0 ? undefined : ring;
}

/** Links of one ring of regulators, each of which feeds the next, or none where there is no such ring. */
export function regulatorRing({ nodes, links }: Pick<Network, 'nodes' | 'links'>): number[] {
  if (!links.some(({ kind }) => kind === 'regulator')) return [];
  const leaving: number[][] = nodes.map(() => []);
  links.forEach(({ kind, from }, link) => {
    if (kind === 'regulator') leaving[from]!.push(link);
  });
  const isDone = new Uint8Array(nodes.length);
  for (const start of nodes.keys()) {
    const way: number[] = [];
    const onWay = new Map<number, number>();
    const left: number[][] = [];
    const enter = (node: number): void => {
      onWay.set(node, way.length);
      left.push([...leaving[node]!]);
    };
    if (!isDone[start]) enter(start);
    while (left.length > 0) {
      const link = left.at(-1)!.pop();
      if (link === undefined) {
        left.pop();
        const last = way.pop();
        const node = last === undefined ? start : links[last]!.to;
        onWay.delete(node);
        isDone[node] = 1;
        continue;
      }
      const { to } = links[link]!;
      if (onWay.has(to)) return [...way.slice(onWay.get(to)), link];
      if (isDone[to]) continue;
      way.push(link);
      enter(to);
    }
  }
  return [];
}
