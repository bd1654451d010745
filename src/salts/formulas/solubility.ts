import { zeroCelsius } from '../../water/constants.js';
import { waterDensityIapws2008 } from '../../water/density.js';
import { molarMassOfFormula } from './molar-mass.js';
import { salts, type SaltKey } from '../salt-table.js';
import { roughSolubilities, saturatedMassPercents, solubilityTemperatures, type RoughSolubility } from '../solubility-table.js';

/**
 * Mass of a pure salt that a kilogram of water dissolves, kg/kg, at a temperature (K). Undefined for liquids and for what is in no table.
 *
 * Handbook mass fractions w of the anhydrous salt are interpolated between 0, 10, 20, 25, 30 and 40 °C and held beyond. A hydrate
 * brings water along: per kilogram of water added it dissolves h = r w/(1 - r w), r its molar mass over that of the anhydrous salt.
 * `roughSolubilities` stands for five salts that the handbook has not.
 *
 * Source: CRC Handbook of Chemistry and Physics, 98th edition, Aqueous solubility of inorganic compounds at various temperatures.
 *
 * @example solubilityOfSalt('potassium-nitrate', 298.15) // => 0.3831
 */
export function solubilityOfSalt(salt: SaltKey, temperature: number): number | undefined {
  const celsius = temperature - zeroCelsius;
  const { formula } = salts[salt];
  const [anhydrous = formula] = formula.split('·');
  const percents = (saturatedMassPercents as Readonly<Record<string, readonly number[] | undefined>>)[anhydrous];
  if (percents && isHydrateOf(formula, anhydrous)) {
    const dissolved = (interpolated(solubilityTemperatures.map((at, i) => [at, percents[i]!]), celsius) / 100) * (molarMassOfFormula(formula) / molarMassOfFormula(anhydrous));
    return dissolved / (1 - dissolved);
  }
  const rough = (roughSolubilities as { readonly [S in SaltKey]?: RoughSolubility })[salt];
  return rough && interpolated(rough.points, celsius);
}

/** Whether a formula adds nothing but water to another. */
const isHydrateOf = (formula: string, anhydrous: string): boolean => /^(·\d*H2O)?$/.test(formula.slice(anhydrous.length));

/** The straight line through the points on either side; held at both ends. */
function interpolated(points: readonly (readonly [number, number])[], x: number): number {
  const next = points.findIndex(([at]) => at >= x);
  if (next <= 0) return points.at(next)![1];
  const [[x0, y0], [x1, y1]] = [points[next - 1]!, points[next]!];
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}

/** Coefficients A, B and C of Vogel et al. */
const vogel = {
  'monoammonium-phosphate': [36.422, -3370.284, -4.901],
  'diammonium-phosphate': [-31.639, 697.129, 4.718],
  'monopotassium-phosphate': [-4.81, -1510.549, 1.128],
} as const;

/**
 * Mass of a phosphate that a kilogram of water dissolves, kg/kg, at a temperature (K).
 *
 * ln x = A + B/T + C ln T, x the mole fraction of the salt in the saturated solution. Within 3 % of the handbook at 25 °C.
 *
 * Source: Vogel et al. 1963, as in the IUPAC-NIST Solubility Database.
 *
 * @example phosphateSolubilityVogel1963('monopotassium-phosphate', 298.15) // => 0.248
 */
export function phosphateSolubilityVogel1963(salt: keyof typeof vogel, temperature: number): number {
  const [a, b, c] = vogel[salt];
  const fraction = Math.exp(a + b / temperature + c * Math.log(temperature));
  return (fraction / (1 - fraction)) * (molarMassOfFormula(salts[salt].formula) / molarMassOfFormula('H2O'));
}

/**
 * Mass of a salt in a volume of its saturated solution, kg/m3, from the mass that a kilogram of water dissolves (kg/kg), at a temperature (K).
 *
 * c = s/(1/ρ + v s), ρ density of water, v volume that the dissolved salt takes. 0.76 L/kg is that of urea, and salts take less
 * (0.1 to 0.65 L/kg; from memory), so the answer is on the safe side: 9 % low for potassium nitrate at 20 °C.
 *
 * @param volumePerMass m3/kg
 * @example strengthOfSaturatedSolution(0.319, 293.15) // => 256
 */
export function strengthOfSaturatedSolution(solubility: number, temperature: number, volumePerMass = 0.00076): number {
  return solubility / (1 / waterDensityIapws2008(temperature) + volumePerMass * solubility);
}
