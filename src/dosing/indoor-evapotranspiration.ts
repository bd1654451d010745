import { calculation } from '../calculation/calculation.js';
import { atmosphericPressureField } from '../calculation/common-fields.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { coverTransmissionField, radiationSumField } from '../light/site-fields.js';
import { evaporationRate, pressure, radiationSum, transferResistance } from '../units/dimensions.js';
import { saturationPressureFao56 } from '../water/saturation/magnus.js';
import { netShortwaveFao56 } from './formulas/net-radiation.js';
import { referenceEvapotranspirationFao56, windSpeedFromAerodynamicResistance } from './formulas/reference-evapotranspiration.js';
import { airTemperatureField, relativeHumidityField } from './humidity-of-day.js';
import { withoutDew } from './without-dew.js';

/**
 * Evapotranspiration of well-watered grass in a house over a day, by the Penman-Monteith equation with a fixed resistance in the place of wind: times a
 * crop coefficient it is the need of a crop.
 *
 * Takes mean temperature and relative humidity of the air in the house, and either the net radiation inside (-5 to 25 MJ/m²) or the solar radiation of the
 * day with the share of it that the house lets through (left out, it was measured inside), of which the plants keep 77 %; the resistance of the air to
 * vapour (20 to 1000 s/m; 150 unless given), and the pressure of the atmosphere. In a house near 37° N it was measured at just under 1 mm a day in
 * winter and 4 mm in July.
 * @throws InputError for input outside these limits, for both radiations or neither, and for a cover beside the net radiation.
 * @example
 * indoorEvapotranspiration({ airTemperature: '22 °C', relativeHumidity: '70 %', netRadiation: '8 MJ/m²', atmosphericPressure: '101.3 kPa' }).referenceEvapotranspiration.in('mm/d') // => 2.8894
 */
export const indoorEvapotranspiration = /* @__PURE__ */ calculation({
  id: 'indoorEvapotranspiration',
  title: 'Reference evapotranspiration of a day in a house',
  inputs: () => ({
    airTemperature: airTemperatureField(),
    relativeHumidity: relativeHumidityField(),
    netRadiation: field.optional(field.quantity(radiationSum, { limits: ['-5 MJ/m²', '25 MJ/m²'] })),
    radiationSum: field.optional(radiationSumField()),
    coverTransmission: coverTransmissionField(),
    aerodynamicResistance: field.withDefault(field.quantity(transferResistance, { limits: ['20 s/m', '1000 s/m'] }), '150 s/m'),
    atmosphericPressure: atmosphericPressureField(),
  }),
  outputs: () => ({
    netRadiation: output.quantity(radiationSum, 'MJ/m²'),
    vapourPressureDeficit: output.quantity(pressure, 'kPa'),
    referenceEvapotranspiration: output.quantity(evaporationRate, 'mm/d'),
  }),
  equation: 'ETo = [0.408 Δ Rn + γ 900/(t + 273) u2 (es − ea)]/[Δ + γ (1 + 0.34 u2)] mm/d, u2 = 208/ra, Rn = 0.77 τ Rs',
  sources: ['fao56', 'fernandez-2010'],
  example: { airTemperature: '21 °C', relativeHumidity: '72 %', radiationSum: '18 MJ/m²', coverTransmission: '65 %' },
  check: (seen, problem) => {
    expectExactlyOne(seen, ['netRadiation', 'radiationSum'], problem);
    if (seen.netRadiation !== undefined && seen.coverTransmission !== 1) problem(['coverTransmission'], 'no cover beside netRadiation, which is that inside', 'one', 'give radiationSum for the radiation outdoors');
  },
  solve: ({ airTemperature, relativeHumidity, netRadiation, radiationSum, coverTransmission, aerodynamicResistance, atmosphericPressure }, { note }) => {
    if (radiationSum !== undefined) note('info', 'no-longwave', 'netRadiation', 'What plants and cover radiate to each other is left out: under film that lets heat through the result is a little high.');
    const vapourPressureDeficit = saturationPressureFao56(airTemperature) * (1 - Math.min(1, relativeHumidity));
    const net = netRadiation ?? netShortwaveFao56(coverTransmission * radiationSum!);
    const air = { temperature: airTemperature, deficit: vapourPressureDeficit, pressure: atmosphericPressure, windSpeed: windSpeedFromAerodynamicResistance(aerodynamicResistance) };
    return { netRadiation: net, vapourPressureDeficit, referenceEvapotranspiration: withoutDew(referenceEvapotranspirationFao56(air, net), note) };
  },
});
