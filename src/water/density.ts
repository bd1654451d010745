import { zeroCelsius } from './constants.js';

/**
 * Density of liquid water at 0.1 MPa, in kg/m³, from the temperature in K.
 *
 * The right choice for fresh water near atmospheric pressure; 1 bar more raises it by 0.005 %.
 *
 *   ρ = 1/v,  v = (R Tr/p0) (a5 + Σ ai αⁿ + Σ bi βᵐ),  α = Tr/(593 K - T),  β = Tr/(T - 232 K)
 *
 * with Tr = 10 K, p0 = 0.1 MPa, R = 461.51805 J/(kg K).
 * Range: 253.15 K (supercooled) to 383.15 K (superheated above 99.6 °C); the poles at 232 K and 593 K are far outside.
 * Source: IAPWS SR6-08(2011), equation for the specific volume; coefficients as given in the open program iapws.
 *
 * @example waterDensityIapws2008(298.15) // => 997.047013
 */
export function waterDensityIapws2008(temperature: number): number {
  const a = 10 / (593 - temperature);
  const b = 10 / (temperature - 232);
  const a4 = a ** 4;
  const sum = 1.93763157e-2
    + a4 * (6.74458446e3 + a * (-2.22521604e5 + a * a * (1.00231247e8 + a * (-1.63552118e9 + a * 8.32299658e9))))
    + b * (5.78545292e-3 + b * (-1.53195665e-2 + b * (3.11337859e-2 + b * (-4.23546241e-2 + b * (3.38713507e-2 - b * 1.19946761e-2)))));
  return 1e5 / (461.51805 * 10 * sum);
}

/** Coefficients of Kell's density equation: a polynomial over 1 + `denominator` × t. */
export interface KellCoefficients {
  readonly numerator: readonly number[];
  readonly denominator: number;
}

const kell1975: KellCoefficients = {
  numerator: [999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12],
  denominator: 16.879850e-3,
};

/**
 * Density of liquid water at 1 atm, in kg/m³, from the temperature in K, by Kell's equation.
 *
 * For checking older tables and instruments that carry it; otherwise use waterDensityIapws2008.
 *
 *   ρ = (c0 + c1 t + c2 t² + c3 t³ + c4 t⁴ + c5 t⁵)/(1 + d t),  t in °C
 *
 * Range: 0 to 150 °C. Within 0.004 kg/m³ of IAPWS-95 from 0 to 50 °C (the temperature scale is that of 1968).
 * The coefficients are from memory, as also carried by several public programs: pass others as the last argument.
 * Copies with a denominator of 16.897850e-3 circulate; two digits are swapped there and 20 °C comes out 0.27 kg/m³ low.
 * Source: Kell (1975), J. Chem. Eng. Data 20, 97-105.
 */
export function waterDensityKell1975(temperature: number, coefficients: KellCoefficients = kell1975): number {
  const t = temperature - zeroCelsius;
  return coefficients.numerator.reduceRight((sum, c) => sum * t + c, 0) / (1 + coefficients.denominator * t);
}
