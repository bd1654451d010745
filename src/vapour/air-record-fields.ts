/** What airRecord takes in and gives out. */
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { single } from '../calculation/single-field.js';
import type { DimensionDefinition } from '../units/dimension.js';
import {
  dailyLight, irradiance, photonFlux, photonYield, pressure, radiationSum, share, temperature, temperatureDifference, temperatureTime, time,
} from '../units/dimensions.js';
import type { Dimension, QuantityText } from '../units/quantity.js';
import { correlation } from './common.js';
import { coverHeatTransfer, insideFilmCoefficient } from './cover-fields.js';
import { baseTemperature, upperTemperature } from './degree-day-fields.js';

/** A column within limits that reading does not hold it to: newReadingCheck does, and says more of what is wrong. */
function readings<D extends Dimension>(definition: DimensionDefinition<D>, limits: readonly [QuantityText<D>, QuantityText<D>]) {
  const unit = limits[0].slice(limits[0].indexOf(' '));
  const anything = field.column(definition, { limits: [`-1e12${unit}`, `1e12${unit}`] as unknown as readonly [QuantityText<D>, QuantityText<D>] });
  return single(field.column(definition, { limits }).about, anything.read);
}

const inHouse = () => readings(temperature, ['-39.9 °C', '60 °C']);
const timeOfDay = () => field.quantity(time, { limits: ['0 h', '24 h'] });

export const airRecordInputs = () => ({
  readingTime: readings(time, ['0 d', '14640 d']),
  airTemperature: inHouse(),
  relativeHumidity: readings(share, ['0.1 %', '102 %']),
  leafTemperature: field.optional(inHouse()),
  leafTemperatureOffset: field.optional(field.quantity(temperatureDifference, { limits: ['-20 K', '20 K'] })),
  coverTemperature: field.optional(inHouse()),
  outsideTemperature: field.optional(readings(temperature, ['-60 °C', '60 °C'])),
  coverHeatTransfer: field.optional(coverHeatTransfer()),
  insideFilmCoefficient: insideFilmCoefficient(),
  photonFlux: field.optional(readings(photonFlux, ['-50 µmol/(m²·s)', '5000 µmol/(m²·s)'])),
  globalRadiation: field.optional(readings(irradiance, ['-50 W/m²', '2000 W/m²'])),
  photonYield: field.withDefault(field.quantity(photonYield, { limits: ['0.5 µmol/J', '10 µmol/J'] }), '2.06 µmol/J'),
  coverTransmission: field.withDefault(field.share(), 1),
  temperatureOffset: field.withDefault(field.quantity(temperatureDifference, { limits: ['-10 K', '10 K'] }), '0 K'),
  humidityOffset: field.withDefault(field.share({ limits: [-0.3, 0.3] }), 0),
  longestGap: field.withDefault(field.quantity(time, { limits: ['1 s', '24 h'] }), '90 min'),
  dayBegins: field.withDefault(timeOfDay(), '6 h'),
  nightBegins: field.withDefault(timeOfDay(), '18 h'),
  dayLight: field.optional(field.quantity(photonFlux, { limits: ['0 µmol/(m²·s)', '500 µmol/(m²·s)'] })),
  deficitBands: field.optional(field.list(field.quantity(pressure, { limits: ['0 kPa', '20 kPa'] }), { limits: [1, 20] })),
  baseTemperature: field.optional(baseTemperature()),
  upperTemperature: upperTemperature(),
  degreeDayMethod: field.withDefault(field.choice(['readings', 'limited', 'mean']), 'readings'),
  correlation: correlation(),
});

const means = () => ({
  dayStart: output.column(time, 'd'),
  coveredTime: output.column(time, 'h'),
  meanDeficit: output.column(pressure, 'kPa'),
  meanAirTemperature: output.column(temperature, '°C'),
});

export const airRecordOutputs = () => ({
  vapourPressureDeficit: output.column(pressure, 'kPa'),
  condensationTemperature: output.column(temperature, '°C'),
  leafVapourPressureDeficit: output.optional(output.column(pressure, 'kPa')),
  coveredTime: output.quantity(time, 'h'),
  uncoveredTime: output.quantity(time, 'h'),
  meanDeficit: output.quantity(pressure, 'kPa'),
  meanAirTemperature: output.quantity(temperature, '°C'),
  dayDeficit: output.optional(output.quantity(pressure, 'kPa')),
  nightDeficit: output.optional(output.quantity(pressure, 'kPa')),
  bands: output.optional(output.list(output.group({
    deficitAbove: output.optional(output.quantity(pressure, 'kPa')),
    deficitBelow: output.optional(output.quantity(pressure, 'kPa')),
    bandTime: output.quantity(time, 'h'),
    bandShare: output.quantity(share, '%'),
  }))),
  leafWetTime: output.optional(output.quantity(time, 'h')),
  coverWetTime: output.optional(output.quantity(time, 'h')),
  degreeDays: output.optional(output.quantity(temperatureTime, 'K·d')),
  meanDailyLight: output.optional(output.quantity(dailyLight, 'mol/(m²·d)')),
  wholeDays: output.group({
    ...means(),
    highestAirTemperature: output.column(temperature, '°C'),
    lowestAirTemperature: output.column(temperature, '°C'),
    leafWetTime: output.optional(output.column(time, 'h')),
    coverWetTime: output.optional(output.column(time, 'h')),
    degreeDays: output.optional(output.column(temperatureTime, 'K·d')),
  }),
  daytimes: output.group(means()),
  nights: output.group(means()),
  lightDays: output.optional(output.group({
    dayStart: output.column(time, 'd'),
    coveredTime: output.column(time, 'h'),
    dailyLight: output.column(dailyLight, 'mol/(m²·d)'),
    radiationSum: output.optional(output.column(radiationSum, 'MJ/m²')),
  })),
});
