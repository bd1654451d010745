import { triplePointTemperature, zeroCelsius } from '../../water/constants.js';
import { hasIceEquation, saturationEquationsOverIce, type Surface } from '../../water/saturation/over-ice.js';
import { saturationEquationOverWater, saturationEquationsOverWater, type SaturationCorrelation } from '../../water/saturation/over-water.js';
import { humidityRatioFromVapourPressure, molarMassRatio } from './moist-air.js';
import { wetBulbFromHumidityRatio, wickFreezes, wickHeats } from './wet-bulb.js';

/** What came of a column of wet bulbs. */
export interface WetBulbs {
  /** In K; NaN where a reading lacks. */
  readonly wetBulbs: Float64Array;
  /** Rows with an iced wick. */
  readonly iced: number;
  /** Rows with a liquid wick below 0 °C. */
  readonly supercooled: number;
  /** Rows of air moister than saturated, whose wet bulb is the air temperature. */
  readonly moist: number;
}

/** Newton steps before a row is left to the slow way. */
const mostSteps = 12;

/**
 * Thermodynamic wet bulb temperatures for columns of air temperature in K and relative humidity (0 to 1), at one pressure in Pa.
 *
 * Row by row what wetBulbFromHumidityRatio gives, to 1e-9 K, but by Newton's method on the heat balance of the bulb from a rough start: a step takes
 * the slope of the saturation pressure from a Magnus equation, and then from the last two points. A row whose steps leave the air's own temperature and
 * what is 60 K below it, or do not end, is solved by the bracketed search.
 *
 * Source: ASHRAE Handbook Fundamentals (2017), chapter 1, equations 33 and 35.
 *
 * @example wetBulbsFromRelativeHumidity(Float64Array.of(298.15), Float64Array.of(0.6), 101325).wetBulbs[0] // => 292.621
 */
export function wetBulbsFromRelativeHumidity(
  temperatures: Float64Array, relativeHumidities: Float64Array, pressure: number, correlation: SaturationCorrelation = 'IAPWS',
): WetBulbs {
  const water = saturationEquationsOverWater[correlation].pressure;
  const cold = saturationEquationOverWater(0, correlation).pressure;
  const ice = hasIceEquation(correlation) ? saturationEquationsOverIce[correlation].pressure : cold;
  const overWater = (temperature: number): number => (temperature < triplePointTemperature ? cold(temperature) : water(temperature));
  // Of warm air only that below these lines through humidity ratio and temperature can freeze the wick; of frosty air, wickFreezes has to say.
  const holdsAtZero = (wick: Surface, saturation: number): number => wickHeats[wick].latent * humidityRatioFromVapourPressure(saturation, pressure);
  const wetAtZero = holdsAtZero('water', overWater(zeroCelsius));
  const icedAtZero = hasIceEquation(correlation) ? holdsAtZero('ice', ice(zeroCelsius)) : -Infinity;
  const wetBulbs = new Float64Array(temperatures.length);
  let [iced, supercooled, moist] = [0, 0, 0];
  for (let i = 0; i < temperatures.length; i++) {
    const dryBulb = temperatures[i]!;
    const humidity = relativeHumidities[i]!;
    if (humidity >= 1) {
      if (humidity > 1) moist++;
      wetBulbs[i] = dryBulb;
      continue;
    }
    const t = dryBulb - zeroCelsius;
    const saturated = overWater(dryBulb);
    const vapour = humidity * saturated;
    const ratio = molarMassRatio * vapour / (pressure - vapour);
    if (!(ratio >= 0)) {
      wetBulbs[i] = NaN;
      continue;
    }
    const isIced = t < 0
      ? wickFreezes(dryBulb, ratio, pressure, correlation)
      : ratio * (wickHeats.water.latent + 1.86 * t) < wetAtZero - 1.006 * t && ratio * (wickHeats.ice.latent + 1.86 * t) < icedAtZero - 1.006 * t;
    const wick = isIced ? 'ice' : 'water';
    wetBulbs[i] = newton(t, ratio, vapour, saturated, wick) ?? wetBulbFromHumidityRatio(dryBulb, ratio, pressure, correlation, wick).value;
    if (isIced) iced++;
    else if (wetBulbs[i]! < zeroCelsius) supercooled++;
  }
  return { wetBulbs, iced, supercooled, moist };

  /** The wet bulb in K, or undefined where the steps go astray; t in °C, vapour pressures in Pa. */
  function newton(t: number, ratio: number, vapour: number, saturated: number, wick: Surface): number | undefined {
    const { latent, perDegree, fallPerDegree } = wickHeats[wick];
    const fall = latent + 1.86 * t;
    let tw = start(t, vapour, saturated);
    let last = NaN;
    let lastExcess = NaN;
    let slope = NaN;
    for (let step = 0; step < mostSteps; step++) {
      const es = wick === 'ice' ? ice(tw + zeroCelsius) : overWater(tw + zeroCelsius);
      // The balance of the bulb multiplied by P - e, as in wetBulbFromHumidityRatio.
      const lift = molarMassRatio * (latent - perDegree * tw);
      const given = 1.006 * (t - tw) + ratio * (fall - fallPerDegree * tw);
      const excess = lift * es - given * (pressure - es);
      if (step === 0) slope = (lift + given) * es * magnusSlope(tw) - molarMassRatio * perDegree * es + (1.006 + fallPerDegree * ratio) * (pressure - es);
      else slope = (excess - lastExcess) / (tw - last);
      const next = tw - excess / slope;
      if (!(next < t + 0.01 && next > t - 60)) return undefined;
      // What is left after a step is a few hundredths of the product of the last two, in K.
      if (Math.abs((next - tw) * (tw - last)) < 1e-9) return Math.min(next, t) + zeroCelsius;
      last = tw;
      lastExcess = excess;
      tw = next;
    }
    return undefined;
  }

  /** A rough wet bulb in °C: the deficit over the slope of the vapour pressure, which is flatter between the bulb and the air than at the air. */
  function start(t: number, vapour: number, saturated: number): number {
    const slope = saturated * magnusSlope(t);
    const straight = (saturated - vapour) / (slope + 0.00066 * pressure);
    const bend = 0.027 * slope / (slope + 0.00066 * pressure);
    return t - straight * (1 + bend * straight * (1 + bend * straight));
  }
}

/** Slope of the logarithm of the saturation pressure at a temperature in °C, to a few thousandths, after Magnus. */
const magnusSlope = (t: number): number => 17.62 * 243.12 / ((243.12 + t) * (243.12 + t));
