/** What films of air need: viscosity and conductivity by temperature. */

/** Specific gas constant of dry air, J/(kg K) (ASHRAE 2017). */
const gasConstant = 287.042;

/** Specific heat of air at constant pressure, J/(kg K). */
export const airSpecificHeat = 1006;

/**
 * Dynamic viscosity of air in Pa s, from the temperature in K.
 *
 *   μ = 1.458·10⁻⁶ T^(3/2)/(T + 110.4 K)
 *
 * Range: about 170 to 500 K. Source: U.S. Standard Atmosphere 1976, equation 51 (from memory, checked against its sea-level value).
 *
 * @example airViscosityStandardAtmosphere1976(288.15) // => 1.7894e-5
 */
export const airViscosityStandardAtmosphere1976 = (temperature: number): number => (1.458e-6 * temperature ** 1.5) / (temperature + 110.4);

/**
 * Thermal conductivity of air in W/(m K), from the temperature in K.
 *
 *   k = 2.64638·10⁻³ T^(3/2)/(T + 245.4 K · 10^(-12 K/T))
 *
 * Range: about 170 to 500 K. Source: U.S. Standard Atmosphere 1976, equation 53 (from memory, checked against its sea-level value).
 *
 * @example airThermalConductivityStandardAtmosphere1976(288.15) // => 0.025326
 */
export const airThermalConductivityStandardAtmosphere1976 = (temperature: number): number =>
  (2.64638e-3 * temperature ** 1.5) / (temperature + 245.4 * 10 ** (-12 / temperature));

/** Kinematic viscosity, thermal diffusivity and conductivity of air, as films of it need them. */
export interface AirProperties {
  /** m²/s */
  readonly kinematicViscosity: number;
  /** m²/s */
  readonly thermalDiffusivity: number;
  /** W/(m K) */
  readonly thermalConductivity: number;
}

/**
 * Properties of air for a film of it, from the temperature in K and the pressure in Pa: ν = μ/ρ, α = k/(ρ cp), ρ = p/(R T). Taken as dry:
 * moisture changes them by less than 2 % below 40 °C.
 *
 * @example airProperties(287).kinematicViscosity // => 1.450e-5
 */
export function airProperties(temperature: number, pressure = 101325): AirProperties {
  const density = pressure / (gasConstant * temperature);
  const thermalConductivity = airThermalConductivityStandardAtmosphere1976(temperature);
  return {
    kinematicViscosity: airViscosityStandardAtmosphere1976(temperature) / density,
    thermalDiffusivity: thermalConductivity / (density * airSpecificHeat),
    thermalConductivity,
  };
}
