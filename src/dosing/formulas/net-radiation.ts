/** Reflected part of solar radiation of the grass that FAO-56 refers to. */
const grassAlbedo = 0.23;

/**
 * Solar radiation that a surface keeps, in the unit of Rs: Rns = (1 - α) Rs.
 *
 * Source: Allen et al. (1998), FAO-56, equation 38.
 *
 * @param albedo α, 0.23 for grass
 * @example netShortwaveFao56(14.4561) // => 11.1312, printed 11.1 MJ/m2
 */
export function netShortwaveFao56(radiation: number, albedo = grassAlbedo): number {
  return (1 - albedo) * radiation;
}

/**
 * Heat that a black body radiates in a day, in J/m2, from its temperature in K, as FAO-56 tabulates it.
 *
 *   σ T⁴,  σ = 4.903e-9 MJ K-4 m-2 d-1,  T = t + 273.16
 *
 * FAO-56 adds 273.16 instead of 273.15 here; so does this function. Source: Allen et al. (1998), FAO-56, equation 39 and Table 2.8.
 *
 * @example blackBodyRadiationFao56(293.15) // => 36.21e6
 */
export function blackBodyRadiationFao56(temperature: number): number {
  return 4.903e-3 * (temperature + 0.01) ** 4;
}

/** How clearly the surface sees the cold sky: the two brackets of equation 39, each kept from turning round. */
function skyFactor(vapourPressure: number, relativeRadiation: number): number {
  const cloudless = 1.35 * Math.min(1, relativeRadiation) - 0.35;
  return Math.max(0, 0.34 - 0.14 * Math.sqrt(vapourPressure / 1000)) * Math.max(0.05, cloudless);
}

/**
 * Heat that a surface outdoors loses by radiation in a day, in J/m2.
 *
 *   Rnl = σ (Tmax⁴ + Tmin⁴)/2 (0.34 - 0.14 √ea) (1.35 Rs/Rso - 0.35),  ea in kPa
 *
 * Rs/Rso counts as 1 above 1. Below 0.296, darker than any overcast day of the sunshine equation, the last bracket is kept at 0.05, and above 5.9 kPa the one before it at 0.
 * Source: Allen et al. (1998), FAO-56, equation 39.
 *
 * @param highest Tmax, K
 * @param lowest Tmin, K
 * @param vapourPressure ea, Pa
 * @param relativeRadiation Rs/Rso
 * @example netLongwaveFao56(298.25, 292.25, 2100, 14.4561 / 18.8332) // => 3.51e6, printed 3.5 MJ/m2
 */
export function netLongwaveFao56(highest: number, lowest: number, vapourPressure: number, relativeRadiation: number): number {
  return (blackBodyRadiationFao56(highest) + blackBodyRadiationFao56(lowest)) / 2 * skyFactor(vapourPressure, relativeRadiation);
}

/**
 * The same for an hour, in J/m2, from the mean temperature of the hour in K; σ = 2.043e-10 MJ K-4 m-2 h-1.
 *
 * At night Rs/Rso is that of two to three hours before sunset, or 0.4 to 0.6 in moist and 0.7 to 0.8 in dry climates.
 * Source: Allen et al. (1998), FAO-56, equation 39 with the constant for hours.
 *
 * @example hourlyNetLongwaveFao56(301.15, 3402, 0.8) // => 0.100e6
 */
export function hourlyNetLongwaveFao56(temperature: number, vapourPressure: number, relativeRadiation: number): number {
  return 2.043e-4 * (temperature + 0.01) ** 4 * skyFactor(vapourPressure, relativeRadiation);
}

/**
 * Heat that goes into the soil in a day of a month, in J/m2, from the mean temperatures of the months before and after it, in K (or °C).
 *
 *   G = 0.07 (T next - T previous) MJ/m2
 *
 * Source: Allen et al. (1998), FAO-56, equation 43.
 *
 * @example monthlySoilHeatFao56(14.1, 18.8) // => 0.329e6, printed 0.33 MJ/m2
 */
export function monthlySoilHeatFao56(previous: number, next: number): number {
  return 0.07e6 * (next - previous);
}

/** The same where the month after is not known: G = 0.14 (T - T previous) MJ/m2. Source: Allen et al. (1998), FAO-56, equation 44. */
export function monthlySoilHeatSoFarFao56(previous: number, present: number): number {
  return 0.14e6 * (present - previous);
}

/**
 * Heat that goes into the soil in an hour, in the unit of the net radiation: a tenth of it by day, half of it by night.
 *
 * Source: Allen et al. (1998), FAO-56, equations 45 and 46.
 */
export function hourlySoilHeatFao56(netRadiation: number, isDay: boolean): number {
  return (isDay ? 0.1 : 0.5) * netRadiation;
}
