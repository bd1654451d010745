import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { energy, power, share, temperature, temperatureDifference, time } from '../units/dimensions.js';
import { percent } from '../units/in-words.js';
import { writeNumber } from '../units/write.js';
import { celsius } from './cautions.js';
import { heatToWarm } from './formulas/lumped.js';
import { checkAmount, massOf, waterAmountFields } from './water-amount.js';

/** Temperatures this near to each other are the same, K. */
const negligible = 1e-6;

/**
 * Heat that barrels of water give a house over a night, against what the house loses.
 *
 * Takes the water of one barrel by mass (0.1 kg to 10 t) or by what it holds (0.1 L to 10 m³), the number of barrels (1 to 1000; 1 by default), by how
 * much they cool (0.1 to 40 K; 5 to 10 K is usual), the time they have for it (1 to 24 h; 10 h by default), their temperature at first (20 °C by
 * default), and the loss of the house (1 W to 1 MW), as `houseHeatLoss` has it. Gives the heat, its mean power, the share of the loss that it is, and
 * the barrels for the whole of it. By common practice 100 to 200 L go with each m² of glazing to the sun. They must have been warmed by the sun before,
 * and they cool only as far as the house does: with the temperature that it is kept at (`houseTemperature`, -10 to 50 °C), a drop beyond it is noted.
 * @throws InputError for input outside these limits and for water that would freeze.
 * @example
 * heatStore({ waterMass: '200 kg', temperatureDrop: '8 K', nightLength: '10 h' }).meanPower.in('W') // => 186.044
 */
export const heatStore = /* @__PURE__ */ calculation({
  id: 'heatStore',
  title: 'Barrels as a heat store over a night',
  inputs: () => ({
    ...waterAmountFields(),
    barrelsInStore: field.withDefault(field.count({ limits: [1, 1000] }), 1),
    waterTemperature: field.withDefault(field.quantity(temperature, { limits: ['0 °C', '95 °C'] }), '20 °C'),
    temperatureDrop: field.quantity(temperatureDifference, { limits: ['0.1 K', '40 K'], valid: ['0.1 K', '15 K'] }),
    nightLength: field.withDefault(field.quantity(time, { limits: ['1 h', '24 h'] }), '10 h'),
    houseTemperature: field.optional(field.quantity(temperature, { limits: ['-10 °C', '50 °C'] })),
    heatLoss: field.optional(field.quantity(power, { limits: ['1 W', '1000 kW'] })),
  }),
  outputs: () => ({
    storedHeat: output.quantity(energy, 'MJ'),
    meanPower: output.quantity(power, 'W'),
    shareOfLoss: output.optional(output.quantity(share, '%')),
    barrelsForLoss: output.optional(output.number()),
  }),
  equation: 'Q = N m cp ΔT; P = Q/t',
  sources: ['definition'],
  example: { barrelVolume: '200 L', barrelsInStore: 3, temperatureDrop: '6 K', nightLength: '12 h', heatLoss: '5 kW' },
  check: (seen, problem) => {
    checkAmount(seen, problem);
    if (seen.waterTemperature - seen.temperatureDrop < 273.15) problem(['temperatureDrop'], 'a drop that leaves the water above 0 °C', 'one that freezes it', 'start warmer, or take a smaller drop');
  },
  solve: ({ specificHeat, barrelsInStore, waterTemperature, temperatureDrop, nightLength, houseTemperature, heatLoss, ...amount }, { note }) => {
    const ofOne = heatToWarm(massOf(amount, waterTemperature), specificHeat, temperatureDrop) / nightLength;
    const meanPower = barrelsInStore * ofOne;
    const barrelsForLoss = heatLoss === undefined ? undefined : Math.ceil((heatLoss / ofOne) * (1 - 1e-12));
    if (houseTemperature !== undefined && waterTemperature - temperatureDrop < houseTemperature - negligible) {
      note('caution', 'colder-than-house', 'temperatureDrop', `A barrel cools no further than the house it stands in: from ${celsius(waterTemperature)} to the ${celsius(houseTemperature)} of the house it ${waterTemperature > houseTemperature ? `falls by ${writeNumber(waterTemperature - houseTemperature)} K at most` : 'gives no heat'}.`);
    }
    if (heatLoss !== undefined && meanPower < heatLoss / 10) {
      note('info', 'little-of-the-loss', 'shareOfLoss', `The barrels give ${percent(meanPower / heatLoss)} of what the house loses: they soften a night but do not heat it; ${barrelsForLoss} would be needed for all of it. A second layer or a screen saves more.`);
    }
    return { storedHeat: meanPower * nightLength, meanPower, shareOfLoss: heatLoss === undefined ? undefined : meanPower / heatLoss, barrelsForLoss };
  },
});
