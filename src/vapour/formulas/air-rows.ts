import { triplePointPressure, triplePointTemperature, zeroCelsius } from '../../water/constants.js';
import { magnusWmo, magnusWmoIce, saturationTemperatureMagnus, type MagnusCoefficients } from '../../water/saturation/magnus.js';
import { hasIceEquation, saturationEquationsOverIce } from '../../water/saturation/over-ice.js';
import { saturationEquationOverWater, saturationEquationsOverWater, type SaturationCorrelation } from '../../water/saturation/over-water.js';
import { saturationTemperatureOverIce, saturationTemperatureOverWater } from '../../water/saturation/temperature.js';

/** Readings of a logger in SI units, row by row; NaN where one lacks. A column of outside temperatures may have one value for all rows. */
export interface AirBlock {
  /** In s, since the midnight that begins the first day. A row without a time is in no sum. */
  readonly readingTime: Float64Array;
  readonly airTemperature: Float64Array;
  /** 0 to 1. */
  readonly relativeHumidity: Float64Array;
  readonly leafTemperature?: Float64Array | undefined;
  readonly coverTemperature?: Float64Array | undefined;
  readonly outsideTemperature?: Float64Array | undefined;
  readonly photonFlux?: Float64Array | undefined;
  readonly globalRadiation?: Float64Array | undefined;
}

/** How readings are taken. */
export interface AirRowOptions {
  readonly correlation?: SaturationCorrelation;
  /** Added to the readings, in K and as a fraction. */
  readonly temperatureOffset?: number;
  readonly humidityOffset?: number;
  /** Leaf less air, in K, for rows without a leaf temperature. */
  readonly leafTemperatureOffset?: number | undefined;
  /** U-value of the cover over the film coefficient inside: for rows without a cover temperature it follows from that outside. */
  readonly coverRatio?: number | undefined;
  /** Photons for each joule of global radiation, in mol/J (2.06e-6), and the share of the light that the cover lets through to the plants (1). */
  readonly photonYield?: number;
  readonly coverTransmission?: number;
}

/** What follows from the readings of each row. */
export interface AirRows {
  /** With the offset. */
  readonly temperature: Float64Array;
  readonly vapourPressure: Float64Array;
  readonly deficit: Float64Array;
  readonly leafDeficit?: Float64Array | undefined;
  /** Saturation pressure at the leaf, over ice where it is frozen, less the vapour pressure: below zero where it gets wet. The same of the cover. */
  readonly leafMargin?: Float64Array | undefined;
  readonly coverMargin?: Float64Array | undefined;
  /** Photons at the plants, in mol/(m² s). */
  readonly light?: Float64Array | undefined;
}

/** Least humidity after an offset, so that there is a dew point. */
const driest = 0.001;

/** What follows from readings, row by row: pressures in Pa, temperatures in K. A row that lacks a reading has NaN where it counts, one without a time throughout. */
export function airRows(block: AirBlock, options: AirRowOptions): AirRows {
  const { correlation = 'IAPWS', temperatureOffset = 0, humidityOffset = 0, leafTemperatureOffset, coverRatio, photonYield = 2.06e-6, coverTransmission = 1 } = options;
  const water = saturationEquationsOverWater[correlation].pressure;
  const cold = saturationEquationOverWater(0, correlation).pressure;
  const ice = hasIceEquation(correlation) ? saturationEquationsOverIce[correlation].pressure : cold;
  const overWater = (T: number): number => (T < triplePointTemperature ? cold(T) : water(T));
  const overSurface = (T: number): number => (T <= triplePointTemperature ? ice(T) : water(T));

  const { readingTime, airTemperature, relativeHumidity, leafTemperature, coverTemperature, outsideTemperature, photonFlux, globalRadiation } = block;
  const rows = airTemperature.length;
  const made = (isAsked: boolean): Float64Array | undefined => (isAsked ? new Float64Array(rows) : undefined);
  const [temperature, vapourPressure, deficit] = [new Float64Array(rows), new Float64Array(rows), new Float64Array(rows)];
  for (let i = 0; i < rows; i++) {
    const T = Number.isNaN(readingTime[i]!) ? NaN : airTemperature[i]! + temperatureOffset;
    const saturation = overWater(T);
    const vapour = Math.max(driest, relativeHumidity[i]! + humidityOffset) * saturation;
    temperature[i] = T;
    vapourPressure[i] = vapour;
    deficit[i] = saturation - vapour;
  }

  const hasLeaf = leafTemperature !== undefined || leafTemperatureOffset !== undefined;
  const [leafDeficit, leafMargin] = [made(hasLeaf), made(hasLeaf)];
  if (leafDeficit && leafMargin) {
    for (let i = 0; i < rows; i++) {
      const read = leafTemperature ? leafTemperature[i]! : NaN;
      const T = Number.isNaN(read) ? temperature[i]! + (leafTemperatureOffset ?? NaN) : read;
      leafDeficit[i] = overWater(T) - vapourPressure[i]!;
      leafMargin[i] = T <= triplePointTemperature ? ice(T) - vapourPressure[i]! : leafDeficit[i]!;
    }
  }

  const coverMargin = made(coverTemperature !== undefined || outsideTemperature !== undefined);
  if (coverMargin) {
    for (let i = 0; i < rows; i++) {
      const read = coverTemperature ? coverTemperature[i]! : NaN;
      const outside = outsideTemperature?.[i] ?? outsideTemperature?.[0] ?? NaN;
      const T = Number.isNaN(read) ? temperature[i]! - (coverRatio ?? NaN) * (temperature[i]! - outside) : read;
      coverMargin[i] = overSurface(T) - vapourPressure[i]!;
    }
  }

  const source = photonFlux ?? globalRadiation;
  const light = made(source !== undefined);
  if (light) {
    const share = coverTransmission * (photonFlux ? 1 : photonYield);
    for (let i = 0; i < rows; i++) light[i] = Number.isNaN(readingTime[i]!) ? NaN : share * Math.max(0, source![i]!);
  }
  return { temperature, vapourPressure, deficit, leafDeficit, leafMargin, coverMargin, light };
}

/**
 * Temperatures in K below which a surface in air of these vapour pressures in Pa gets wet or frosted: the dew point, and below 0.01 °C the frost point.
 *
 * Where the equation has no closed inverse, by a Newton step with the slope of a Magnus equation and secants after it, to 1e-9 K. FAO-56, which has no equation over
 * ice, gives the dew point throughout.
 *
 * @example dewOrFrostPoints(Float64Array.of(1901.85, 259.8738))[1] // => 263.15
 */
export function dewOrFrostPoints(vapourPressures: Float64Array, correlation: SaturationCorrelation = 'IAPWS'): Float64Array {
  const overIce = hasIceEquation(correlation) ? correlation : undefined;
  const isIterated = correlation === 'IAPWS' || correlation === 'ASHRAE';
  const points = new Float64Array(vapourPressures.length);
  for (let i = 0; i < points.length; i++) {
    const e = vapourPressures[i]!;
    if (Number.isNaN(e)) points[i] = NaN;
    else if (overIce && e < triplePointPressure) {
      points[i] = (isIterated ? steps(e, saturationEquationsOverIce[overIce].pressure, magnusWmoIce) : undefined) ?? saturationTemperatureOverIce(e, overIce).value;
    } else points[i] = (correlation === 'ASHRAE' ? steps(e, saturationEquationsOverWater.ASHRAE.pressure, magnusWmo) : undefined) ?? saturationTemperatureOverWater(e, correlation).value;
  }
  return points;
}

/** The temperature at which an equation that is near a Magnus equation gives a vapour pressure in Pa, or undefined where the steps go astray. */
function steps(pressure: number, saturation: (temperature: number) => number, magnus: MagnusCoefficients): number | undefined {
  const [, a, b] = magnus;
  let T = saturationTemperatureMagnus(pressure, magnus);
  let last = T;
  let lastMiss = NaN;
  for (let step = 0; step < 10; step++) {
    const t = T - zeroCelsius;
    const miss = Math.log(saturation(T) / pressure);
    const change = miss * (step === 0 ? (b + t) * (b + t) / (a * b) : (T - last) / (miss - lastMiss));
    if (Math.abs(change) < 1e-8) return T - change;
    last = T;
    lastMiss = miss;
    T -= change;
  }
  return undefined;
}
