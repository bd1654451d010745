/** What of a network cannot have a head, or not one head. */
import type { Network, NetworkLink } from './network.js';

/** The nodes that no links join to one whose head is kept, shut ones left out unless told otherwise. Which way links let water pass does not matter here. */
export function unfedNodes({ nodes, links }: Pick<Network, 'nodes' | 'links'>, joins = ({ kind }: NetworkLink): boolean => kind !== 'shut'): number[] {
  const leader = new Int32Array(nodes.length).map((_, node) => node);
  const leaderOf = (node: number): number => {
    let at = node;
    while (leader[at] !== at) {
      leader[at] = leader[leader[at]!]!;
      at = leader[at]!;
    }
    return at;
  };
  for (const link of links) if (joins(link)) leader[leaderOf(link.from)] = leaderOf(link.to);
  const isFed = new Uint8Array(nodes.length);
  nodes.forEach(({ head }, node) => {
    if (head !== undefined) isFed[leaderOf(node)] = 1;
  });
  const unfed: number[] = [];
  for (let node = 0; node < nodes.length; node++) if (!isFed[leaderOf(node)]) unfed.push(node);
  return unfed;
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
