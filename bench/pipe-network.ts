import { Project, Workspace } from 'epanet-js';

/** EN_DEMAND of the toolkit: what leaves a node. Its enumerations carry no types here. */
const demand = 9;

/** A level lateral of emitters q = k h^0.5; flows in m³/h, lengths and heads in m, diameter and roughness in mm. */
export interface NetworkLateral {
  readonly outlets: number;
  readonly spacing: number;
  readonly diameter: number;
  readonly roughness: number;
  readonly inletHead: number;
  readonly emitterCoefficient: number;
}

function describe({ outlets, spacing, diameter, roughness, inletHead, emitterCoefficient }: NetworkLateral): string {
  const each = (line: (i: number) => string) => Array.from({ length: outlets }, (_, i) => line(i + 1)).join('\n');
  return `[JUNCTIONS]
${each((i) => `n${i} 0`)}
[RESERVOIRS]
n0 ${inletHead}
[PIPES]
${each((i) => `p${i} n${i - 1} n${i} ${spacing} ${diameter} ${roughness}`)}
[EMITTERS]
${each((i) => `n${i} ${emitterCoefficient}`)}
[OPTIONS]
Units CMH
Headloss D-W
Emitter Exponent 0.5
Accuracy 0.001
[END]
`;
}

async function readerOf() {
  const workspace = new Workspace();
  await workspace.loadModule();
  const open = (text: string) => {
    const project = new Project(workspace);
    workspace.writeFile('lateral.inp', text);
    project.open('lateral.inp', 'lateral.rpt', 'lateral.out');
    return project;
  };
  const flows = (text: string, outlets: number) => {
    const project = open(text);
    project.solveH();
    const found = Array.from({ length: outlets }, (_, i) => project.getNodeValue(i + 1, demand));
    project.close();
    return found;
  };
  return { open, flows };
}

/** The lateral in a pipe-network solver: `whole` reads the description, solves, and gives the flows; `solve` solves what is read already. */
export async function networkSolver(lateral: NetworkLateral) {
  const reader = await readerOf();
  const text = describe(lateral);
  const kept = reader.open(text);
  return { solve: () => kept.solveH(), whole: () => reader.flows(text, lateral.outlets) };
}

/** The most outlets with which the flows of a lateral vary by no more than a share, by doubling them and then halving the step. */
export async function longestByNetwork(lateral: Omit<NetworkLateral, 'outlets'>, most: number): Promise<() => number> {
  const { flows } = await readerOf();
  const keeps = (outlets: number) => {
    const found = flows(describe({ ...lateral, outlets }), outlets);
    return 1 - Math.min(...found) / Math.max(...found) <= most;
  };
  return () => {
    let [low, high] = [1, 2];
    while (keeps(high)) [low, high] = [high, 2 * high];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (keeps(middle)) low = middle;
      else high = middle;
    }
    return low;
  };
}
