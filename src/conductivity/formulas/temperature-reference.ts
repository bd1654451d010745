import { zeroCelsius } from '../../water/constants.js';
import { ionicConductivitiesMcCleskey2012 } from '../ionic-conductivities.js';
import { molalConductivityMcCleskey2012 } from './ionic-conductivity.js';

/**
 * Factor that brings a reading at a temperature (K) to a reference temperature by a constant change per kelvin: 1/[1 + alpha (t - t_ref)].
 *
 * What most meters do. alpha is a fraction of the value at the reference: 0.02 is common practice, 0.0191 is printed for potassium chloride at 25 °C.
 * With 0.02 a feed is overcorrected by 3 % at 10 °C and 5 % at 5 °C.
 *
 * @example temperatureFactorLinear(288.15, 0.02) // => 1.25
 */
export function temperatureFactorLinear(temperature: number, alpha = 0.02, referenceTemperature = 298.15): number {
  return 1 / (1 + alpha * (temperature - referenceTemperature));
}

/** Coefficients of the function of ISO 7888 for natural waters. */
export interface Iso7888Coefficients {
  /** Factor from 20 to 25 °C. */
  readonly at20: number;
  /** Share that follows the viscosity of water. */
  readonly share: number;
  readonly exponent: number;
}

/**
 * Factor that brings a reading of a natural water at a temperature (K) to 25 °C, from the viscosity of water.
 *
 * f = f20 [(1 - s) + s (eta_t/eta_20)^n], log10(eta_20/eta_t) = [1.37023 (t - 20) + 8.36e-4 (t - 20)^2]/(109 + t), t in °C.
 * For ground, spring and surface waters of 0.006 to 0.1 S/m at 0 to 35 °C. It overcorrects a feed, by 3 % at 10 °C.
 *
 * Source: ISO 7888:1985 (EN 27888), function for natural waters, from memory; its own coefficients are an argument, those of the viscosity are not.
 *
 * @example temperatureFactorIso7888(283.15) // => 1.427
 */
export function temperatureFactorIso7888(
  temperature: number, coefficients: Iso7888Coefficients = { at20: 1.116, share: 0.962144, exponent: 0.965078 },
): number {
  const { at20, share, exponent } = coefficients;
  const d = temperature - zeroCelsius - 20;
  const viscosityRatio = 10 ** (-(1.37023 * d + 8.36e-4 * d ** 2) / (129 + d));
  return at20 * (1 - share + share * viscosityRatio ** exponent);
}

/**
 * Factor that brings a reading at a temperature (K) to a reference temperature as potassium chloride of 0.01 mol/kg changes.
 *
 * The ratio of the sums of both ions' conductivities. A complete feed follows potassium chloride within 0.3 % from 5 to 35 °C, a hard
 * bicarbonate water does not: 3 % more at 10 °C.
 *
 * Source: McCleskey, Nordstrom, Ryan and Ball 2012.
 *
 * @example temperatureFactorPotassiumChloride(288.15) // => 1.231, where 1.234 is measured
 */
export function temperatureFactorPotassiumChloride(temperature: number, referenceTemperature = 298.15): number {
  const sum = (t: number): number =>
    (['K+', 'Cl-'] as const).reduce((total, ion) => total + molalConductivityMcCleskey2012(ionicConductivitiesMcCleskey2012[ion], t, 0.01), 0);
  return sum(referenceTemperature) / sum(temperature);
}
