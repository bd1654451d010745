/**
 * log10 of the activity coefficient of an ion.
 *
 * log g = -A z^2 [sqrt(I)/(1 + sqrt(I)) - 0.3 I], I ionic strength in mol/kg, z charge number, A slope of the Debye-Hückel law in (kg/mol)^0.5.
 * For singly charged ions good to about 3 % of g at I = 0.1 and 8 % at 0.5 mol/kg; not meant for stronger solutions.
 *
 * Source: Davies 1962, Ion Association, with 0.3 for the coefficient of the linear term.
 *
 * @example logActivityCoefficientDavies1962(1, 0.1, 0.5096) // => -0.107
 */
export function logActivityCoefficientDavies1962(charge: number, ionicStrength: number, slope: number): number {
  return -slope * charge ** 2 * daviesFunction(ionicStrength);
}

/** Ionic strength, mol/kg, up to which activity coefficients after Davies are known well enough to work with. */
export const strongestForDavies = 0.5;

/** The part of Davies' equation that depends on ionic strength alone: sqrt(I)/(1 + sqrt(I)) - 0.3 I. */
export function daviesFunction(ionicStrength: number): number {
  const root = Math.sqrt(ionicStrength);
  return root / (1 + root) - 0.3 * ionicStrength;
}

/** Its derivative: 1/[2 sqrt(I) (1 + sqrt(I))^2] - 0.3. */
export function daviesDerivative(ionicStrength: number): number {
  const root = Math.sqrt(ionicStrength);
  return 1 / (2 * root * (1 + root) ** 2) - 0.3;
}
