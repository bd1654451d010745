/** Rows of pipes with emitters that hang on the rest of a network by one end, as laterals do. */
import type { LinkCurve } from './network-curves.js';
import type { EmittersLaw } from './network-emitters.js';
import type { Parts } from './network-parts.js';

/** What a row is made of, from its dead end on: emitters, and the pipe and the rise from the next place, or from the rest, to here. */
export interface Row {
  readonly emitters: readonly (EmittersLaw | undefined)[];
  readonly curves: readonly LinkCurve[];
  readonly rises: readonly number[];
}

/** A row in its place: its nodes and links from the dead end on, and the node of the rest that it hangs on. Equal rows are one. */
export interface Chain {
  readonly root: number;
  readonly nodes: readonly number[];
  readonly links: readonly number[];
  readonly row: Row;
}

/** Shorter ones stay with the rest. */
const shortest = 8;

/** A row is looked for among so many of the latest ones. */
const compared = 8;

const areEqual = (one: Row, two: Row): boolean =>
  one.curves.length === two.curves.length && one.curves.every((curve, i) => curve === two.curves[i] && one.emitters[i] === two.emitters[i] && one.rises[i] === two.rises[i]);

/** All rows of a network. */
export function chainsOf({ from, to, curves, elevations, demands, emitters, isFree }: Parts): Chain[] {
  // How many links meet at a node, and the exclusive or of their numbers: where two meet and one is known, that is the other.
  const degree = new Int32Array(elevations.length);
  const meeting = new Int32Array(elevations.length);
  for (let link = 0; link < curves.length; link++) {
    const [start, end] = [from[link]!, to[link]!];
    degree[start]!++;
    degree[end]!++;
    meeting[start]! ^= link;
    meeting[end]! ^= link;
  }
  const chains: Chain[] = [];
  const rows: Row[] = [];
  for (let leaf = 0; leaf < elevations.length; leaf++) {
    if (degree[leaf] !== 1) continue;
    const [nodes, links]: [number[], number[]] = [[], []];
    let node = leaf;
    for (let link = meeting[node]!; isFree[node] && demands[node] === 0 && degree[node]! <= 2 && !curves[link]!.isOneWay; link = meeting[node]! ^ links.at(-1)!) {
      nodes.push(node);
      links.push(link);
      node = from[link]! + to[link]! - node;
    }
    if (nodes.length < shortest) continue;
    const own: Row = {
      emitters: nodes.map((one) => emitters[one]), curves: links.map((link) => curves[link]!),
      rises: nodes.map((one, i) => elevations[one]! - elevations[nodes[i + 1] ?? node]!),
    };
    let row = rows.slice(-compared).find((known) => areEqual(known, own));
    if (!row) rows.push(row = own);
    chains.push({ root: node, nodes, links, row });
  }
  return chains;
}
