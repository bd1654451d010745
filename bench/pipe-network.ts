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

/** The lateral in a pipe-network solver: `whole` reads the description, solves, and gives the flows; `solve` solves what is read already. */
export async function networkSolver(lateral: NetworkLateral) {
  const workspace = new Workspace();
  await workspace.loadModule();
  const text = describe(lateral);
  const open = () => {
    const project = new Project(workspace);
    workspace.writeFile('lateral.inp', text);
    project.open('lateral.inp', 'lateral.rpt', 'lateral.out');
    return project;
  };
  const flowsOf = (project: Project) => Array.from({ length: lateral.outlets }, (_, i) => project.getNodeValue(i + 1, demand));
  const kept = open();
  return {
    solve: () => kept.solveH(),
    whole: () => {
      const project = open();
      project.solveH();
      const flows = flowsOf(project);
      project.close();
      return flows;
    },
  };
}
