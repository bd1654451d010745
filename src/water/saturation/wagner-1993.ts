import { criticalPressure, criticalTemperature, triplePointPressure, triplePointTemperature } from '../constants.js';

/**
 * Saturation vapour pressure over liquid water, in Pa, from the temperature in K, by Wagner and Pruss.
 *
 *   ln(p/pc) = (Tc/T)(a1 v + a2 v^1.5 + a3 v³ + a4 v^3.5 + a5 v⁴ + a6 v^7.5),  v = 1 - T/Tc
 *
 * Range: 273.16 to 647.096 K. Within 0.007 % of IAPWS-95 from 0 to 50 °C.
 * Copies with a3 = -11.7866487 circulate; it is -11.7866497.
 * Source: Wagner and Pruss (1993), J. Phys. Chem. Ref. Data 22, 783-787; IAPWS SR1-86(1992).
 *
 * @example saturationPressureWagnerPruss1993(373.1243) // => 101325
 */
export function saturationPressureWagnerPruss1993(temperature: number): number {
  const v = 1 - temperature / criticalTemperature;
  const s = Math.sqrt(v);
  const sum = v * (-7.85951783 + s * 1.84408259
    + v * v * (-11.7866497 + s * 22.6807411 + v * (-15.9618719 + v * v * v * s * 1.80122502)));
  return criticalPressure * Math.exp(criticalTemperature / temperature * sum);
}

/**
 * Saturation vapour pressure over ice, in Pa, from the temperature in K, by Wagner, Saul and Pruss.
 *
 *   ln(p/pt) = -13.928169 (1 - θ^-1.5) + 34.7078238 (1 - θ^-1.25),  θ = T/273.16 K,  pt = 611.657 Pa
 *
 * Range: 190 to 273.16 K. Within 0.04 % of the later IAPWS R14-08 from -35 to 0 °C.
 * Source: Wagner, Saul and Pruss (1994), J. Phys. Chem. Ref. Data 23, 515-527; as given in several public programs.
 */
export function saturationPressureOverIceWagner1994(temperature: number): number {
  const x = temperature / triplePointTemperature;
  return triplePointPressure * Math.exp(-13.928169 * (1 - x ** -1.5) + 34.7078238 * (1 - x ** -1.25));
}
