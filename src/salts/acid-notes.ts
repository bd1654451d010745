import type { Solving } from '../calculation/calculation.js';
import { saturationIndices } from '../solution/formulas/saturation.js';
import type { Speciation } from '../solution/formulas/speciation.js';
import { endPoint } from '../solution/formulas/stated-solution.js';
import { nearBalance } from '../solution/saturation-notes.js';
import { writeNumber } from '../units/write.js';
import type { TitratedWater, TitratingAcid } from './formulas/acid-titration.js';

/** Rise of pH in the air that is worth a word. Common practice, no source. */
const noticeableRise = 0.2;
/** Alkalinity, mol/m3, below which a percent of acid decides. Common practice, no source. */
const leastBuffer = 0.05;

type WithPH = Speciation & { readonly pH: number };

/** What a treated water comes to. */
export interface TreatedWater {
  readonly acid: TitratingAcid;
  readonly after: TitratedWater;
  readonly reached: WithPH;
  /** Once its carbon dioxide is in balance with the air. */
  readonly inAir: WithPH;
  /** kg/m3, of the water. */
  readonly density: number;
}

/** What has to be said about a water that acid has gone into. */
export function noteTreatedWater({ acid, after, reached, inAir, density }: TreatedWater, { note }: Solving): void {
  const { pH, molalities } = reached;
  if (pH < endPoint) {
    const left = Math.max(0, -after.alkalinity) * density;
    note('danger', 'acid-left', 'pH', `At pH ${pH.toFixed(1)} next to no alkalinity is left${left > 0.001 ? `, and ${writeNumber(left)} meq/L of acid beyond it` : ''}: roots burn, metal corrodes, and a drop more moves pH a long way. Use less acid.`);
  }
  else if (after.alkalinity * density < leastBuffer) {
    note('caution', 'unbuffered', 'alkalinityLeft', `${writeNumber(Math.max(0, after.alkalinity * density))} meq/L of alkalinity is left: a percent more of acid takes pH below 4.5. Dose to a targetAlkalinity of some 0.5 meq/L instead.`);
  }
  if (inAir.pH - pH > noticeableRise) {
    note('info', 'carbon-dioxide-leaves', 'pH', `The acid has made carbon dioxide of bicarbonate, ${writeNumber((molalities.CO2 ?? 0) * density)} mmol/L in all: where it can leave, by stirring, dripping or a night in an open barrel, pH climbs to about ${inAir.pH.toFixed(1)}, less where phosphate has been added. The alkalinity left does not change by it.`);
  }
  const highest = inAir.pH > pH ? inAir : reached;
  const { brushite = -Infinity, calcite = -Infinity } = saturationIndices(highest, after.temperature);
  if (calcite > nearBalance) note('caution', 'lime', 'pHInAir', `Lime can settle out at the pH of ${highest.pH.toFixed(1)} that the water comes to in the air (calcite, saturation index ${calcite.toFixed(1)}): leave less alkalinity.`);
  if (acid.anion === 'H2PO4-' && brushite > 0) {
    note('caution', 'calcium-phosphate', 'acid', `With this much calcium, phosphate of the acid can settle out where pH is ${highest.pH.toFixed(1)}${highest === reached ? '' : ', to which it climbs in the air'} (brushite, saturation index ${brushite.toFixed(1)}), and block drippers: take nitric acid for part of it, or leave less alkalinity.`);
  }
  if (acid.anion === 'C6H6O7 2-') {
    note('info', 'citrate-fades', 'acid', 'Citrate is food for microbes: within days they eat it, the alkalinity that it took away comes back, and slime grows. For water that is used at once. (Common practice, no source.)');
  }
}
