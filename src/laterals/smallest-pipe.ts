import type { AddProblem } from '../calculation/problem.js';
import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { length } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { checkDesign, described, designFields, designOutputs, inletPressure, keeps, trying, type SeenDesign, type Trial } from './design.js';
import { checkConnection } from './lateral-fields.js';
import { checkRoughness } from './pipe.js';
import { pipeSeries, pipeSizes } from './pipe-sizes.js';

/** Most diameters that are tried. */
const mostDiameters = 100;

/**
 * Smallest pipe of a series, or of a list of diameters, with which a drip lateral gives evenly enough.
 *
 * Takes what `lateral` takes of one reach, without its diameter, the number of outlets (1 to 10 000), the pressure at the inlet, and how evenly it is to give:
 * the greatest flow variation or the least design emission uniformity, one of the two. The pipes are drip tubing of 12, 16 and 20 mm by default, PE
 * pipe of a series by name, or any inside diameters (1 mm to 1 m) given as a column; those that the connection does not fit into, or whose wall would be too
 * rough for any friction law, are passed over. Gives the inside diameter, the outside one of a pipe of a series, and
 * what the lateral then does.
 * @throws InputError for input outside these limits, where not exactly one of the two measures is given, and where no pipe keeps the limit: it then tells
 * how far the best one is from it.
 * @example
 * const row = smallestPipe({ outlets: 120, spacing: '25 cm', emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.5, inletPressure: '1 bar', mostFlowVariation: 0.1 });
 * row.diameter.in('mm') // => 10.2
 */
export const smallestPipe = /* @__PURE__ */ calculation({
  id: 'smallestPipe',
  title: 'Smallest pipe of a drip lateral for a limit of unevenness',
  inputs: () => ({
    ...designFields(),
    outlets: field.count({ limits: [1, 10_000] }),
    inletPressure: inletPressure(),
    pipeSeries: field.withDefault(field.choice(pipeSeries), 'drip tubing'),
    diameters: field.optional(field.column(length, { limits: ['1 mm', '1 m'] })),
  }),
  outputs: () => ({ diameter: output.quantity(length, 'mm'), outsideDiameter: output.optional(output.quantity(length, 'mm')), ...designOutputs() }),
  equation: 'the least D for which (q_max − q_min)/q_max, or EU, of the lateral computed outlet by outlet keeps the limit',
  sources: ['wu-gitlin-1974', 'keller-karmeli-1974', 'clamond-2009', 'iapws-sr6-08', 'iso-4427-2'],
  example: { outlets: 120, spacing: '25 cm', emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.5, inletPressure: '1 bar', mostFlowVariation: 0.1 },
  check: (seen, problem) => {
    checkDesign(seen, problem);
    if (seen.diameters && (seen.diameters.length > mostDiameters || seen.diameters.si.every(Number.isNaN))) problem(['diameters'], `1 to ${mostDiameters} diameters`, String(seen.diameters.length));
    const sizes = sizesOf(seen);
    if (!sizes.some(({ inside }) => fits(seen, inside))) checkSize(seen, sizes.at(-1)?.inside ?? NaN, problem);
  },
  solve: (seen, solving) => {
    let nearest: Trial | undefined;
    for (const { inside, outside } of sizesOf(seen).filter(({ inside }) => fits(seen, inside))) {
      const design: SeenDesign = { ...seen, diameter: inside };
      const trial = trying(design, seen.inletPressure);
      if (keeps(trial)) return { diameter: inside, outsideDiameter: outside, ...described(trial!, design, solving) };
      if (trial && (nearest === undefined || trial.unevenness < nearest.unevenness)) nearest = trial;
    }
    const got = nearest ? `pipes of which the best is ${writeNumber(nearest.unevenness)} times as uneven as allowed` : 'pipes that water does not reach every emitter through';
    return solving.refuse(seen.diameters ? 'diameters' : 'pipeSeries', 'a pipe that keeps the limit', got, 'take a larger series, a shorter lateral, another inlet pressure, or compensating emitters');
  },
});

type Walls = Pick<SeenDesign, 'roughness' | 'connection'>;

function checkSize({ roughness, connection }: Walls, diameter: number, problem: AddProblem): void {
  checkRoughness({ roughness, diameter }, problem);
  checkConnection({ diameter, connection }, [], problem);
}

/** Whether a pipe suits its wall and its connections. */
function fits(walls: Walls, diameter: number): boolean {
  let found = true;
  checkSize(walls, diameter, () => (found = false));
  return found;
}

/** The pipes to be tried, from small to large, in m. */
function sizesOf({ diameters, pipeSeries: series }: { readonly diameters: { readonly si: Float64Array } | undefined; readonly pipeSeries: string }): readonly { readonly inside: number; readonly outside?: number }[] {
  if (diameters) return [...diameters.si].filter((inside) => !Number.isNaN(inside)).sort((a, b) => a - b).map((inside) => ({ inside }));
  return pipeSizes.filter((row) => row.series === series).map(({ inside, outside }) => ({ inside: inside / 1000, outside: outside / 1000 }));
}
