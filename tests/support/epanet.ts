/** A network as the public-domain solver EPANET reads it and solves it. */
import { Project, Workspace } from 'epanet-js';
import type { PlainEmitter } from '../../src/laterals/formulas/emitter.js';
import type { FrictionChoice } from '../../src/laterals/formulas/friction-law.js';
import type { Network, NetworkLink, NetworkNode } from '../../src/supply/formulas/network.js';
import type { PumpCurvePoint } from '../../src/supply/formulas/pump-curve.js';

/** What the solver knows under the same names: emitters of one exponent, pumps by three points, and links that its format has a line for. */
export interface PlainNetwork extends Network {
  readonly friction: FrictionChoice;
  /** Emitter of each node that has one; the laws of the network are made of these. */
  readonly emitters: ReadonlyMap<number, PlainEmitter>;
  readonly pumpPoints: readonly PumpCurvePoint[];
  /** What the law of each valve is made of, or of each non-return valve, by its number among the links: a fitting in a pipe of some length, perhaps of none. */
  readonly fitted: ReadonlyMap<number, FittedPipe>;
}

export interface FittedPipe {
  readonly length: number;
  readonly diameter: number;
  readonly lossCoefficient: number;
}

/** Numbers of the toolkit, whose enumerations carry no types here. */
const [demandOf, headOf, flowOf] = [9, 10, 8];

/** Its gravity, 32.2 ft/s², and its viscosity of water, 1.1·10⁻⁵ ft²/s. */
export const epanetGravity = 32.2 * 0.3048;
export const epanetViscosity = 1.1e-5 * 0.3048 ** 2;

const perHour = 3600;

/** The network as text; flows in m³/h, lengths and heads in m, diameters and roughness in mm. */
export function epanetText({ nodes, links, friction, emitters, pumpPoints, fitted }: PlainNetwork, accuracy: number): string {
  const lines = <T>(all: readonly T[], line: (one: T, i: number) => string | undefined): string => all.map(line).filter((text) => text !== undefined).join('\n');
  const roughness = friction.law === 'Hazen-Williams' ? friction.coefficient : friction.law === 'Darcy-Weisbach' ? friction.roughness * 1000 : NaN;
  const ofKind = <K extends NetworkLink['kind']>(kind: K, line: (link: Extract<NetworkLink, { kind: K }>, i: number) => string): string =>
    lines(links, (link, i) => (link.kind === kind ? line(link as Extract<NetworkLink, { kind: K }>, i) : undefined));
  const ofNodes = (line: (node: NetworkNode, i: number) => string | undefined): string => lines(nodes, line);
  const ends = ({ from, to }: NetworkLink, i: number): string => `l${i} n${from} n${to}`;
  const pipeLine = ({ length, diameter, lossCoefficient = 0 }: Partial<FittedPipe> & Pick<FittedPipe, 'length' | 'diameter'>): string => `${length} ${diameter * 1000} ${roughness} ${lossCoefficient}`;
  const exponent = emitters.values().next().value?.exponent ?? 0.5;
  return `[JUNCTIONS]
${ofNodes(({ head, elevation, demand = 0 }, i) => (head === undefined ? `n${i} ${elevation} ${demand * perHour}` : undefined))}
[RESERVOIRS]
${ofNodes(({ head }, i) => (head === undefined ? undefined : `n${i} ${head}`))}
[PIPES]
${ofKind('pipe', (link, i) => `${ends(link, i)} ${pipeLine(link)}`)}
${ofKind('non-return', (link, i) => `${ends(link, i)} ${pipeLine(fitted.get(i)!)} CV`)}
[PUMPS]
${ofKind('pump', (link, i) => `${ends(link, i)} HEAD curve`)}
[VALVES]
${ofKind('regulator', (link, i) => `${ends(link, i)} 1000 PRV ${link.setting} 0`)}
${ofKind('valve', (link, i) => `${ends(link, i)} ${fitted.get(i)!.diameter * 1000} TCV ${fitted.get(i)!.lossCoefficient} 0`)}
[CURVES]
${lines(pumpPoints, ({ flow, head }) => `curve ${flow * perHour} ${head}`)}
[EMITTERS]
${lines([...emitters], ([i, { flow, head }]) => `n${i} ${(flow * perHour) / head ** exponent}`)}
[OPTIONS]
Units CMH
Headloss ${friction.law === 'Hazen-Williams' ? 'H-W' : 'D-W'}
Emitter Exponent ${exponent}
Viscosity 1
Trials 200
Accuracy ${accuracy}
[END]
`;
}

/** A description in the solver: read and solved, or read and then solved over again. Heads of nodes in m, outflows and flows of links in m³/s, in the order of the network.
 * `accuracy` is the share of all flows that they may still change by in the last step. */
export async function inEpanet(network: PlainNetwork, accuracy = 1e-5) {
  const workspace = new Workspace();
  await workspace.loadModule();
  const text = epanetText(network, accuracy);
  const open = (): Project => {
    const project = new Project(workspace);
    workspace.writeFile('network.inp', text);
    project.open('network.inp', 'network.rpt', 'network.out');
    return project;
  };
  const results = (project: Project) => ({
    heads: network.nodes.map((_, i) => project.getNodeValue(project.getNodeIndex(`n${i}`), headOf)),
    outflows: network.nodes.map((_, i) => project.getNodeValue(project.getNodeIndex(`n${i}`), demandOf) / perHour),
    flows: network.links.map((_, i) => project.getLinkValue(project.getLinkIndex(`l${i}`), flowOf) / perHour),
  });
  return {
    /** Undefined where it finds no solution. */
    readAndSolve: () => {
      const project = open();
      try {
        project.solveH();
        return results(project);
      } catch (error) {
        if (/Error 110/.test(String(error))) return undefined;
        throw error;
      } finally {
        project.close();
      }
    },
    /** Reads it now, to be solved as often as wanted. */
    read: () => {
      const project = open();
      return () => project.solveH();
    },
  };
}
