/**
 * Air pressure in Pa at an altitude in m, in the standard atmosphere (15 °C at sea level).
 *
 *   P = 101325 (1 - 2.25577e-5 z)^5.2559
 *
 * Range: -500 to 10000 m. Strictly z is geopotential altitude: at 4000 m true altitude it is 2.5 m less, which is 0.03 % of pressure.
 * Weather moves the true pressure by 3 % either way.
 * Source: ASHRAE Handbook Fundamentals (2017), chapter 1, equation 3.
 *
 * @example pressureAtAltitudeAshrae(500) // => 95461
 */
export function pressureAtAltitudeAshrae(altitude: number): number {
  return 101325 * (1 - 2.25577e-5 * altitude) ** 5.2559;
}

/**
 * Air temperature in K at an altitude in m, in the standard atmosphere: 288.15 - 0.0065 z.
 *
 * Range: -500 to 10000 m. Source: ASHRAE Handbook Fundamentals (2017), chapter 1, equation 4.
 */
export function temperatureAtAltitudeAshrae(altitude: number): number {
  return 288.15 - 0.0065 * altitude;
}

/**
 * Air pressure in Pa at an altitude in m, as irrigation work takes it (20 °C at sea level).
 *
 *   P = 101300 ((293 - 0.0065 z)/293)^5.26
 *
 * 0.3 % above the standard atmosphere at 1800 m: it assumes warmer air.
 * Source: Allen et al. (1998), FAO-56, equation 7.
 *
 * @example pressureAtAltitudeFao56(1800) // => 81756, printed 81.8 kPa
 */
export function pressureAtAltitudeFao56(altitude: number): number {
  return 101300 * ((293 - 0.0065 * altitude) / 293) ** 5.26;
}
