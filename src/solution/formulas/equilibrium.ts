/** Coefficients of log10 K = A1 + A2 T + A3/T + A4 log10 T + A5/T^2 + A6 T^2, T in K; what is not given is zero. */
export type AnalyticCoefficients = readonly [a1: number, a2?: number, a3?: number, a4?: number, a5?: number, a6?: number];

/** log10 of an equilibrium constant at a temperature (K) from a six-term analytic expression. */
export function logConstantAnalytic(coefficients: AnalyticCoefficients, temperature: number): number {
  const [a1, a2 = 0, a3 = 0, a4 = 0, a5 = 0, a6 = 0] = coefficients;
  return a1 + a2 * temperature + a3 / temperature + a4 * Math.log10(temperature) + a5 / temperature ** 2 + a6 * temperature ** 2;
}

/**
 * log10 of an equilibrium constant at a temperature (K) from its value at 25 °C and the enthalpy of the reaction (J/mol) taken as constant.
 *
 * log K = log K25 - dH/(R ln 10) (1/T - 1/298.15)
 */
export function logConstantVantHoff(logConstant25: number, enthalpy: number, temperature: number): number {
  return logConstant25 - (enthalpy / (8.314462618 * Math.LN10)) * (1 / temperature - 1 / 298.15);
}

/** How a constant is known: over temperature, or at 25 °C with an enthalpy (J/mol; where it is not given the constant is taken not to change). */
export interface TabledConstant {
  readonly analytic?: AnalyticCoefficients;
  readonly logK25?: number;
  readonly enthalpy?: number;
}

/** log10 of an equilibrium constant at a temperature (K) from its row in a table. */
export function logConstantOf({ analytic, logK25 = 0, enthalpy = 0 }: TabledConstant, temperature: number): number {
  return analytic ? logConstantAnalytic(analytic, temperature) : logConstantVantHoff(logK25, enthalpy, temperature);
}

/**
 * First dissociation constant of carbonic acid (dissolved carbon dioxide) in fresh water, pK1 = pKa of CO2(aq) + H2O = HCO3- + H+.
 *
 * pK1 = -126.34048 + 6320.813/T + 19.568224 ln T, T in K, 0 to 50 °C, zero ionic strength.
 *
 * Source: Millero et al. 2006, Marine Chemistry 100, 80 (fresh-water part of the equation).
 *
 * @example carbonicAcidPk1Millero2006(298.15) // => 6.3515
 */
export function carbonicAcidPk1Millero2006(temperature: number): number {
  return -126.34048 + 6320.813 / temperature + 19.568224 * Math.log(temperature);
}

/**
 * Second dissociation constant of carbonic acid in fresh water, pK2 = pKa of HCO3- = CO3-- + H+.
 *
 * pK2 = -90.18333 + 5143.692/T + 14.613358 ln T, T in K, 0 to 50 °C, zero ionic strength.
 *
 * Source: Millero et al. 2006, Marine Chemistry 100, 80 (fresh-water part of the equation).
 *
 * @example carbonicAcidPk2Millero2006(298.15) // => 10.3297
 */
export function carbonicAcidPk2Millero2006(temperature: number): number {
  return -90.18333 + 5143.692 / temperature + 14.613358 * Math.log(temperature);
}

/**
 * log10 of Henry's constant of carbon dioxide in water, mol/kg per atmosphere of partial pressure, from the temperature in K.
 *
 * log K = 108.3865 + 0.01985076 T - 6919.53/T - 40.45154 log10 T + 669365/T^2, 0 to 90 °C, zero ionic strength.
 *
 * Source: Plummer and Busenberg 1982, Geochimica et Cosmochimica Acta 46, 1011.
 *
 * @example logHenryConstantPlummerBusenberg1982(298.15) // => -1.4679
 */
export function logHenryConstantPlummerBusenberg1982(temperature: number): number {
  return logConstantAnalytic([108.3865, 0.01985076, -6919.53, -40.45154, 669365], temperature);
}
