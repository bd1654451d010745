import { triplePointTemperature, zeroCelsius } from '../../water/constants.js';
import { hasIceEquation, saturationEquationsOverIce, type Surface } from '../../water/saturation/over-ice.js';
import { saturationEquationOverWater, saturationEquationsOverWater, type SaturationCorrelation } from '../../water/saturation/over-water.js';
import { humidityRatioFromVapourPressure, molarMassRatio } from './moist-air.js';
import { wetBulbFromHumidityRatio, wickHeats } from './wet-bulb.js';

/** What came of a column of wet bulbs. */
export interface WetBulbs {
  /** In K; NaN where a reading lacks, and where the vapour would press harder than the air. */
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
  const mayIce = hasIceEquation(correlation);
  const ice = mayIce ? saturationEquationsOverIce[correlation].pressure : cold;
  const overWater = (temperature: number): number => (temperature < triplePointTemperature ? cold(temperature) : water(temperature));
  // A wick freezes in frosty air that is not moister than saturated over ice, and in warm air below these lines through humidity ratio and temperature.
  const holdsAtZero = (wick: Surface, saturation: number): number => wickHeats[wick].latent * humidityRatioFromVapourPressure(saturation, pressure);
  const wetAtZero = holdsAtZero('water', overWater(zeroCelsius));
  const icedAtZero = mayIce ? holdsAtZero('ice', ice(zeroCelsius)) : -Infinity;
  const wetBulbs = new Float64Array(temperatures.length);
  let [iced, supercooled, moist] = [0, 0, 0];
  for (let i = 0; i < temperatures.length; i++) {
    const dryBulb = temperatures[i]!;
    const humidity = relativeHumidities[i]!;
    if (humidity >= 1) {
      if (humidity > 1 && dryBulb > 0) moist++;
      if (dryBulb < zeroCelsius) supercooled++;
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
    const overIce = t < 0 ? ice(dryBulb) : NaN;
    const isIced = t < 0
      ? mayIce && vapour <= overIce
      : ratio * (wickHeats.water.latent + 1.86 * t) < wetAtZero - 1.006 * t && ratio * (wickHeats.ice.latent + 1.86 * t) < icedAtZero - 1.006 * t;
    wetBulbs[i] = newton(t, ratio, vapour, isIced && t < 0 ? overIce : saturated, isIced)
      ?? wetBulbFromHumidityRatio(dryBulb, ratio, pressure, correlation, isIced ? 'ice' : 'water').value;
    if (isIced) iced++;
    else if (wetBulbs[i]! < zeroCelsius) supercooled++;
  }
  return { wetBulbs, iced, supercooled, moist };

  /** The wet bulb in K, or undefined where the steps go astray; t in °C, vapour pressures in Pa. */
  function newton(t: number, ratio: number, vapour: number, saturated: number, isIced: boolean): number | undefined {
    const { latent, perDegree, fallPerDegree } = isIced ? wickHeats.ice : wickHeats.water;
    const { above, pole } = isIced ? roughly.ice : roughly.water;
    const fall = latent + 1.86 * t;
    let tw = start(t, vapour, saturated, isIced);
    let last = NaN;
    let lastExcess = NaN;
    let slope = NaN;
    for (let step = 0; step < mostSteps; step++) {
      const es = isIced ? ice(tw + zeroCelsius) : overWater(tw + zeroCelsius);
      // The balance of the bulb multiplied by P - e, as in wetBulbFromHumidityRatio.
      const lift = molarMassRatio * (latent - perDegree * tw);
      const given = 1.006 * (t - tw) + ratio * (fall - fallPerDegree * tw);
      const excess = lift * es - given * (pressure - es);
      if (step === 0) slope = (lift + given) * es * above / ((pole + tw) * (pole + tw)) - molarMassRatio * perDegree * es + (1.006 + fallPerDegree * ratio) * (pressure - es);
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
  function start(t: number, vapour: number, saturated: number, isIced: boolean): number {
    const { cooling, flattening, above, pole } = isIced ? roughly.ice : roughly.water;
    const slope = saturated * above / ((pole + t) * (pole + t));
    const whole = slope + cooling * pressure;
    const straight = (saturated - vapour) / whole;
    const bend = flattening * straight * slope / whole;
    return t - straight * (1 + bend * (1 + bend));
  }
}

/**
 * To start from: the psychrometer coefficient in 1/K, half the share by which the slope of the saturation pressure rises with a degree, and what the slope of its
 * logarithm is by a Magnus equation, `above`/(`pole` + t)², to a few thousandths.
 */
const roughly = {
  water: { cooling: 0.00066, flattening: 0.027, above: 4283.77, pole: 243.12 },
  ice: { cooling: 0.00058, flattening: 0.035, above: 6123.05, pole: 272.62 },
} as const;
