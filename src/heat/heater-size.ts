import { calculation } from '../calculation/calculation.js';
import { mainsElectricity } from '../calculation/caution.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { energy, energyPerVolume, mass, power, specificEnthalpy, temperature, thermalConductance, time, volume } from '../units/dimensions.js';
import { percent } from '../units/in-words.js';
import { celsius, combustion } from './cautions.js';
import { fuels, type Fuel, type FuelName } from './fuels.js';
import { airOutside } from './house-fields.js';

/** The best heaters that burn, by the lower calorific value, with the heat of their vapour won back. */
const mostByBurning = 1.1;

/** A calorific value further than this from that of the trade is perhaps that of another fuel, or in another unit. */
const farOff = 0.25;

/**
 * The heater for the coldest night, and the fuel that a usual one takes.
 *
 * Takes what the house loses per kelvin (0.1 W/K to 1 MW/K), as `houseHeatLoss` gives it, the temperature to be kept (-10 to 50 °C), the outside
 * temperature to plan for and that of the night in question (that to plan for by default; -40 to 60 °C), a margin for wind, age and warming up (20 % by
 * default), how long it heats (10 h by default), and the fuel. Calorific value and efficiency are those of the trade unless given: the supplier's and
 * the heater's own go before them. Gives the loss to plan for, the power of the heater, and for the night its mean power, heat, and fuel by mass or
 * volume, by the hour and altogether. Noted: an efficiency above 110 % of what burns, and a calorific value more than 25 % off that of the trade.
 * @throws InputError for input outside these limits, for a house to be kept no warmer than outside, and for calorific values that do not belong to the fuel.
 * @example
 * const frost = heaterSize({ houseConductance: '588 W/K', houseTemperature: '3 °C', designTemperature: '-9 °C', outsideTemperature: '-3 °C', fuel: 'propane' });
 * frost.heaterPower.in('kW') // => 8.467
 * frost.fuelMass?.in('kg') // => 3.220
 */
export const heaterSize = /* @__PURE__ */ calculation({
  id: 'heaterSize',
  title: 'Heater of a house and its fuel',
  inputs: () => ({
    houseConductance: field.quantity(thermalConductance, { limits: ['0.1 W/K', '1000000 W/K'] }),
    houseTemperature: field.quantity(temperature, { limits: ['-10 °C', '50 °C'] }),
    designTemperature: airOutside(),
    outsideTemperature: field.optional(airOutside()),
    sizingMargin: field.withDefault(field.share(), 0.2),
    nightLength: field.withDefault(field.quantity(time, { limits: ['1 h', '24 h'] }), '10 h'),
    fuel: field.withDefault(field.choice(Object.keys(fuels) as FuelName[]), 'electricity'),
    heatPerMass: field.optional(field.quantity(specificEnthalpy, { limits: ['5 MJ/kg', '60 MJ/kg'] })),
    heatPerVolume: field.optional(field.quantity(energyPerVolume, { limits: ['5 MJ/m³', '50 MJ/L'] })),
    heaterEfficiency: field.optional(field.share({ limits: [0.2, 5] })),
  }),
  outputs: () => ({
    heatLoss: output.quantity(power, 'W'),
    heaterPower: output.quantity(power, 'W'),
    meanPower: output.quantity(power, 'W'),
    nightHeat: output.quantity(energy, 'kWh'),
    heaterEnergy: output.quantity(energy, 'kWh'),
    fuelMass: output.optional(output.quantity(mass, 'kg')),
    fuelMassPerHour: output.optional(output.quantity(mass, 'kg')),
    fuelVolume: output.optional(output.quantity(volume, 'L')),
    fuelVolumePerHour: output.optional(output.quantity(volume, 'L')),
  }),
  equation: 'P = (1 + margin) K (Ti − T_design); heat K (Ti − To) t; fuel heat/(η H)',
  sources: ['common-practice'],
  example: { houseConductance: '588 W/K', houseTemperature: '3 °C', designTemperature: '-9 °C', outsideTemperature: '-3 °C', fuel: 'propane' },
  check: ({ houseTemperature, designTemperature, outsideTemperature, fuel, heatPerMass, heatPerVolume }, problem) => {
    if (designTemperature >= houseTemperature) problem(['designTemperature'], 'a temperature below the one to be kept', 'one not below it', 'are the two swapped?');
    if (outsideTemperature !== undefined && outsideTemperature < designTemperature) problem(['outsideTemperature'], 'at least that to plan for', 'a colder night', `set designTemperature to ${celsius(outsideTemperature)}`);
    if (fuel === 'electricity' && (heatPerMass ?? heatPerVolume) !== undefined) problem(['fuel'], 'a fuel to which the calorific value belongs', 'electricity');
    else if ((heatPerMass ?? heatPerVolume) !== undefined) expectExactlyOne({ heatPerMass, heatPerVolume }, ['heatPerMass', 'heatPerVolume'], problem);
  },
  solve: ({ houseConductance, houseTemperature, designTemperature, outsideTemperature = designTemperature, sizingMargin, nightLength, fuel, heatPerMass, heatPerVolume, heaterEfficiency }, { note }) => {
    const usual: Fuel = fuels[fuel];
    const heatLoss = houseConductance * (houseTemperature - designTemperature);
    const meanPower = Math.max(0, houseConductance * (houseTemperature - outsideTemperature));
    const nightHeat = meanPower * nightLength;
    const heaterEnergy = nightHeat / (heaterEfficiency ?? usual.efficiency);
    const given = (heatPerMass ?? heatPerVolume) !== undefined;
    const [perMass, perVolume] = given ? [heatPerMass, heatPerVolume] : [usual.heatPerMass, usual.heatPerVolume];
    const caution = fuel === 'electricity' ? mainsElectricity : combustion;
    note(caution.severity, caution.code, 'fuel', caution.text);
    if (fuel !== 'electricity' && (heaterEfficiency ?? 0) > mostByBurning) note('caution', 'efficiency-too-high', 'heaterEfficiency', `No heater that burns ${fuel} brings ${percent(heaterEfficiency!)} of its heat into the house, as only a heat pump on electricity does: state its efficiency, ${percent(usual.efficiency)} being usual, or electricity as the fuel.`);
    for (const [name, stated] of [['heatPerMass', heatPerMass], ['heatPerVolume', heatPerVolume]] as const) {
      const ratio = stated === undefined ? 1 : stated / (usual[name] ?? stated);
      if (Math.abs(ratio - 1) > farOff) note('caution', 'calorific-value-far-off', name, `This is ${percent(ratio)} of the calorific value that ${fuel} usually has, and the fuel that it takes is reckoned from it: check the figure and its unit.`);
    }
    const night = (heat: number | undefined) => (heat === undefined ? undefined : heaterEnergy / heat);
    const hour = (amount: number | undefined) => (amount === undefined ? undefined : (amount * 3600) / nightLength);
    const [fuelMass, fuelVolume] = [night(perMass), night(perVolume)];
    return {
      heatLoss, heaterPower: (1 + sizingMargin) * heatLoss, meanPower, nightHeat, heaterEnergy,
      fuelMass, fuelMassPerHour: hour(fuelMass), fuelVolume, fuelVolumePerHour: hour(fuelVolume),
    };
  },
});
