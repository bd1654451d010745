import type { Root } from '../../numerics/roots.js';
import { bracketedRoot } from '../../numerics/roots.js';
import { zeroCelsius } from '../../water/constants.js';
import { hasIceEquation, saturationPressureOverIce, type Surface } from '../../water/saturation/over-ice.js';
import { saturationPressureOverWater, type SaturationCorrelation } from '../../water/saturation/over-water.js';
import { humidityRatioFromVapourPressure, molarMassRatio } from './moist-air.js';

/** A wet bulb temperature in K with what covered the bulb; `residual` is in kg/kg of humidity ratio. */
export interface WetBulb extends Root {
  readonly wick: Surface;
}

function overWick(wetBulb: number, wick: Surface, correlation: SaturationCorrelation): number {
  if (wick === 'water') return saturationPressureOverWater(wetBulb, correlation);
  if (!hasIceEquation(correlation)) throw new RangeError(`${correlation} has no equation over ice`);
  return saturationPressureOverIce(wetBulb, correlation);
}

/** Latent heat at 0 °C of what covers the bulb, and what each degree of the bulb takes off it and off the fall, in kJ/kg and kJ/(kg K): equations 33 (water) and 35 (ice). */
export const wickHeats = {
  water: { latent: 2501, perDegree: 2.326, fallPerDegree: 4.186 },
  ice: { latent: 2830, perDegree: 0.24, fallPerDegree: 2.1 },
} as const;

/** The heat balance of the bulb: `lift` Ws(tw) = `gap` + W `fall`, in kJ/kg. */
function balance(dryBulb: number, wetBulb: number, wick: Surface): { lift: number; fall: number; gap: number } {
  const t = dryBulb - zeroCelsius;
  const tw = wetBulb - zeroCelsius;
  const { latent, perDegree, fallPerDegree } = wickHeats[wick];
  return { lift: latent - perDegree * tw, fall: latent + 1.86 * t - fallPerDegree * tw, gap: 1.006 * (t - tw) };
}

/**
 * Humidity ratio in kg/kg, from dry bulb and thermodynamic wet bulb in K and the pressure in Pa.
 *
 *   water: W = [(2501 - 2.326 tw) Ws(tw) - 1.006 (t - tw)]/(2501 + 1.86 t - 4.186 tw)
 *   ice:   W = [(2830 - 0.24 tw) Ws(tw) - 1.006 (t - tw)]/(2830 + 1.86 t - 2.1 tw),  t and tw in °C
 *
 * Unless `wick` says which, the wick is taken as iced below 0 °C, and as liquid there where the correlation has no equation over ice.
 * Negative where the readings cannot belong together, because even dry air would not bring the wet bulb so low; meaningless for a wet bulb
 * above the dry bulb or above boiling. An iced wick by a correlation without an equation over ice throws RangeError.
 * Source: ASHRAE Handbook Fundamentals (2017), chapter 1, equations 33 and 35.
 *
 * @example humidityRatioFromWetBulb(272.15, 268.15, 95461) // => 0.00120
 */
export function humidityRatioFromWetBulb(
  dryBulb: number, wetBulb: number, pressure: number, correlation: SaturationCorrelation = 'IAPWS',
  wick: Surface = wetBulb < zeroCelsius && hasIceEquation(correlation) ? 'ice' : 'water',
): number {
  const { lift, fall, gap } = balance(dryBulb, wetBulb, wick);
  return (lift * humidityRatioFromVapourPressure(overWick(wetBulb, wick, correlation), pressure) - gap) / fall;
}

/** Whether the wick ices over, and the air allows it to stay so. */
function wickFreezes(dryBulb: number, humidityRatio: number, pressure: number, correlation: SaturationCorrelation): boolean {
  const holds = (wetBulb: number, wick: Surface): number => humidityRatioFromWetBulb(dryBulb, wetBulb, pressure, correlation, wick);
  return hasIceEquation(correlation)
    && humidityRatio <= holds(Math.min(dryBulb, zeroCelsius), 'ice')
    && (dryBulb < zeroCelsius || humidityRatio < holds(zeroCelsius, 'water'));
}

/**
 * Thermodynamic wet bulb temperature, from the dry bulb in K, the humidity ratio in kg/kg and the pressure in Pa.
 *
 * The inverse of humidityRatioFromWetBulb, by a bracketed root. Unless `wick` says which, the wick is wet where a wet one stays at or above 0 °C,
 * and iced otherwise; so a narrow band just below 0 °C never comes out, though an iced wick can read it. It is taken as liquid below 0 °C too
 * in air moister than saturated over ice (near 100 % humidity in frost), and where the correlation has no equation over ice.
 * Throws RangeError where there is none: air moister than saturated over the wick, or air whose iced wick would melt.
 *
 * @example wetBulbFromHumidityRatio(298.15, 0.0118971, 101325).value - 273.15 // => 19.471
 */
export function wetBulbFromHumidityRatio(
  dryBulb: number, humidityRatio: number, pressure: number, correlation: SaturationCorrelation = 'IAPWS', wick?: Surface,
): WetBulb {
  wick ??= wickFreezes(dryBulb, humidityRatio, pressure, correlation) ? 'ice' : 'water';
  // Multiplied by P - e, the balance stays finite through the boiling point.
  const excess = (wetBulb: number): number => {
    const { lift, fall, gap } = balance(dryBulb, wetBulb, wick);
    const vapour = overWick(wetBulb, wick, correlation);
    return 1 - (gap + humidityRatio * fall) * (pressure - vapour) / (lift * molarMassRatio * vapour);
  };
  const highest = wick === 'ice' ? Math.min(dryBulb, zeroCelsius) : dryBulb;
  const end = excess(highest);
  // Saturated air, but for rounding.
  if (highest === dryBulb && Math.abs(end) < 1e-12) return { ...measured(dryBulb, 0), wick };
  if (end < 0) {
    throw new RangeError(highest === dryBulb
      ? `air of ${humidityRatio} kg/kg is moister than saturated over ${wick} at ${dryBulb} K`
      : `air of ${humidityRatio} kg/kg at ${dryBulb} K melts an iced wick`);
  }
  const { value, steps } = bracketedRoot(excess, 173.15, highest);
  return { ...measured(value, steps), wick };

  function measured(value: number, steps: number): Root {
    return { value, residual: Math.abs(humidityRatioFromWetBulb(dryBulb, value, pressure, correlation, wick) - humidityRatio), steps };
  }
}
