// Coefficients n1 to n10 of region 4, IAPWS R7-97(2012), Table 34.
const n1 = 0.11670521452767e4;
const n2 = -0.72421316703206e6;
const n3 = -0.17073846940092e2;
const n4 = 0.12020824702470e5;
const n5 = -0.32325550322333e7;
const n6 = 0.14915108613530e2;
const n7 = -0.48232657361591e4;
const n8 = 0.40511340542057e6;
const n9 = -0.23855557567849;
const n10 = 0.65017534844798e3;

/**
 * Saturation vapour pressure over liquid water, in Pa, from the temperature in K, by the industrial formulation IF97.
 *
 * The default over water from the triple point up: fast (two square roots), with an exact inverse.
 *
 *   ϑ = T + n9/(T - n10),  A = ϑ² + n1 ϑ + n2,  B = n3 ϑ² + n4 ϑ + n5,  C = n6 ϑ² + n7 ϑ + n8
 *   p = 1 MPa × [2C/(-B + √(B² - 4AC))]⁴
 *
 * Range: 273.15 to 647.096 K; below it the equation still gives a number, which nothing supports.
 * Accuracy: within 0.007 % of IAPWS-95 from 0 to 50 °C.
 * Source: IAPWS R7-97(2012), equation 30.
 *
 * @example saturationPressureIapws1997(300) // => 3536.58941
 */
export function saturationPressureIapws1997(temperature: number): number {
  const x = temperature + n9 / (temperature - n10);
  const a = (x + n1) * x + n2;
  const b = (n3 * x + n4) * x + n5;
  const c = (n6 * x + n7) * x + n8;
  const root = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
  const square = root * root;
  return 1e6 * square * square;
}

/**
 * Boiling temperature of water in K, or dew point over liquid water, from the vapour pressure in Pa: the exact inverse of
 * saturationPressureIapws1997.
 *
 *   β = (p/1 MPa)^¼,  E = β² + n3 β + n6,  F = n1 β² + n4 β + n7,  G = n2 β² + n5 β + n8,  D = 2G/(-F - √(F² - 4EG))
 *   T = [n10 + D - √((n10 + D)² - 4(n9 + n10 D))]/2
 *
 * Range: 611.213 Pa to 22.064 MPa.
 * Source: IAPWS R7-97(2012), equation 31.
 *
 * @example saturationTemperatureIapws1997(0.1e6) // => 372.755919
 */
export function saturationTemperatureIapws1997(pressure: number): number {
  const y = Math.sqrt(Math.sqrt(pressure * 1e-6));
  const e = (y + n3) * y + n6;
  const f = (n1 * y + n4) * y + n7;
  const g = (n2 * y + n5) * y + n8;
  const sum = n10 + 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
  return (sum - Math.sqrt(sum * sum - 4 * (n9 + n10 * (sum - n10)))) / 2;
}
