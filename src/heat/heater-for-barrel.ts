import { calculation } from '../calculation/calculation.js';
import { mainsElectricity } from '../calculation/caution.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { energy, power, temperature, time } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { barrelArea, barrelHeatTransfer } from './barrel-fields.js';
import { noteWarmBarrel } from './cautions.js';
import { heatToWarm, lumpedTimeToReach } from './formulas/lumped.js';
import { barrelTemperature, checkAmount, massOf, waterAmountFields } from './water-amount.js';

/**
 * Energy, time and power to warm a barrel with a heater in it.
 *
 * Takes the water by mass (0.1 kg to 10 t) or by the barrel that it fills (0.1 L to 10 m³), its temperature and the one wanted (0 to 95 °C), and either the
 * power of the heater (1 W to 100 kW) or the time there is (1 min to 30 d). What the barrel loses (or gains) on the way counts where its area, heat transfer and
 * the air around it (-40 to 60 °C) are given, all three. Gives the heat that the water takes, the energy that the heater spends, the time and the power.
 * A wanted temperature above 30 °C is cautioned for the roots, one above 50 °C as it scalds.
 * @throws InputError for input outside these limits, for a wanted temperature that is not above that of the water, and for a heater that never gets
 * there, with the power that just would.
 * @example
 * heaterForBarrel({ waterMass: '120 kg', waterTemperature: '8 °C', wantedTemperature: '18 °C', heaterPower: '1 kW' }).heatingTime.in('h') // => 1.3953
 */
export const heaterForBarrel = /* @__PURE__ */ calculation({
  id: 'heaterForBarrel',
  title: 'Heater in a barrel',
  inputs: () => ({
    ...waterAmountFields(),
    waterTemperature: barrelTemperature(),
    wantedTemperature: barrelTemperature(),
    heaterPower: field.optional(field.quantity(power, { limits: ['1 W', '100 kW'] })),
    heatingTime: field.optional(field.quantity(time, { limits: ['1 min', '30 d'] })),
    barrelArea: field.optional(barrelArea()),
    barrelHeatTransfer: field.optional(barrelHeatTransfer()),
    airTemperature: field.optional(field.quantity(temperature, { limits: ['-40 °C', '60 °C'] })),
  }),
  outputs: () => ({
    heatIntoWater: output.quantity(energy, 'MJ'),
    heaterEnergy: output.quantity(energy, 'kWh'),
    heatingTime: output.quantity(time, 'h'),
    heaterPower: output.quantity(power, 'W'),
  }),
  equation: 'Q = m cp ΔT; t = Q/P, with losses t = −τ ln((Tf − T)/(Tf − T0)), Tf = Ta + P/(U A)',
  sources: ['definition'],
  cautions: [mainsElectricity],
  example: { barrelVolume: '200 L', waterTemperature: '9 °C', wantedTemperature: '18 °C', heaterPower: '1 kW', barrelArea: '1.7 m²', barrelHeatTransfer: '8 W/(m²·K)', airTemperature: '10 °C' },
  check: (seen, problem) => {
    checkAmount(seen, problem);
    expectExactlyOne(seen, ['heaterPower', 'heatingTime'], problem);
    if (seen.wantedTemperature <= seen.waterTemperature) problem(['wantedTemperature'], 'one above that of the water', 'one not above it', 'are the two swapped?');
    const surroundings = ['barrelArea', 'barrelHeatTransfer', 'airTemperature'] as const;
    const missing = surroundings.filter((name) => seen[name] === undefined);
    if (missing.length > 0 && missing.length < 3) for (const name of missing) problem([name], 'a value, as barrelArea, barrelHeatTransfer and airTemperature go together', 'nothing');
  },
  solve: ({ waterTemperature, wantedTemperature, specificHeat, heaterPower, heatingTime, barrelArea, barrelHeatTransfer, airTemperature, ...amount }, solving) => {
    const { note, refuse } = solving;
    noteWarmBarrel(wantedTemperature, [wantedTemperature], 'wantedTemperature', solving);
    const waterMass = massOf(amount, waterTemperature);
    const rise = wantedTemperature - waterTemperature;
    const heatIntoWater = heatToWarm(waterMass, specificHeat, rise);
    const result = (time: number, power: number) => ({ heatIntoWater, heaterEnergy: time * power, heatingTime: time, heaterPower: power });
    if (barrelArea === undefined || barrelHeatTransfer === undefined || airTemperature === undefined) {
      return heaterPower === undefined ? result(heatingTime!, heatIntoWater / heatingTime!) : result(heatIntoWater / heaterPower, heaterPower);
    }
    const conductance = barrelArea * barrelHeatTransfer;
    const timeConstant = (waterMass * specificHeat) / conductance;
    if (heaterPower === undefined) {
      const settled = waterTemperature - rise / Math.expm1(-heatingTime! / timeConstant);
      if (settled <= airTemperature) note('info', 'no-heater-needed', 'heaterPower', 'The air alone warms the water in that time.');
      return result(heatingTime!, Math.max(0, conductance * (settled - airTemperature)));
    }
    const time = lumpedTimeToReach(wantedTemperature, waterTemperature, airTemperature + heaterPower / conductance, timeConstant);
    if (time === undefined) {
      const least = conductance * (wantedTemperature - airTemperature);
      return refuse('heaterPower', `more than ${writeNumber(least)} W, which the barrel loses at the wanted temperature`, `${writeNumber(heaterPower)} W`, 'take a stronger heater, or lag the barrel');
    }
    return result(time, heaterPower);
  },
});
