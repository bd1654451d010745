import { zeroCelsius } from '../../water/constants.js';
import { potassiumChlorideStandards } from '../potassium-chloride-standards.js';

const primaryStandards = ['molal001', 'molal01', 'molal1'] as const;

/** A column of the table of primary standards. */
export type PrimaryStandard = (typeof primaryStandards)[number];

/**
 * Conductivity (S/m) of a primary standard of potassium chloride at a temperature (K), between the printed rows.
 *
 * Every printed row comes back as it is printed; in between runs the cubic through the two rows below and the two above (at the ends through the
 * four outermost). For 0 to 50 °C, of which 0 to 5 °C lie outside the rows.
 *
 * Source: Pratt et al. 2001 for the rows, uncertain by 0.03 to 0.04 %.
 *
 * @example conductivityPotassiumChloridePratt2001('molal001', 298.15) // => 0.140823
 */
export function conductivityPotassiumChloridePratt2001(standard: PrimaryStandard, temperature: number): number {
  const celsius = temperature - zeroCelsius;
  const rows = potassiumChlorideStandards;
  const above = rows.findIndex((row) => row.celsius >= celsius);
  const first = Math.min(Math.max(above === -1 ? rows.length : above - 2, 0), rows.length - 4);
  return throughPoints(rows.slice(first, first + 4).map((row) => [row.celsius, row[standard]]), celsius);
}

/**
 * Conductivity (S/m) at a temperature (K) of a solution of potassium chloride that has a known one at 25 °C (S/m).
 *
 * κ(t) = κ25 r(t), with r between those of the three primary standards by a parabola over the square root of κ25. Exact for these; from 7 mS/m
 * (0.0005 mol/L) to 11 S/m (1 mol/L). Below the weakest of them, 0.14 S/m, r is an extrapolation, trusted to 0.3 % at 5 °C and less the nearer 25 °C.
 *
 * Source: Pratt et al. 2001 for the standards; the parabola is ours.
 *
 * @example conductivityOfPotassiumChloride(0.1413, 288.15) // => 0.11453
 */
export function conductivityOfPotassiumChloride(conductivity25: number, temperature: number): number {
  const points = primaryStandards.map((standard) => {
    const at25 = conductivityPotassiumChloridePratt2001(standard, 298.15);
    return [Math.sqrt(at25), conductivityPotassiumChloridePratt2001(standard, temperature) / at25] as const;
  });
  return conductivity25 * throughPoints(points, Math.sqrt(conductivity25));
}

/** Lagrange's polynomial through points, at x. */
function throughPoints(points: readonly (readonly [x: number, y: number])[], x: number): number {
  return points.reduce((sum, [xi, yi]) => sum + points.reduce((term, [xj]) => (xj === xi ? term : (term * (x - xj)) / (xi - xj)), yi), 0);
}
