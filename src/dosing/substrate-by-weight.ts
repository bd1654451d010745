import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { mass, share, temperature, volume } from '../units/dimensions.js';
import { waterDensityIapws2008 } from '../water/density.js';
import { airSpaceFromDensities, poreSpaceFromDryDensity } from './formulas/substrate.js';
import { shot } from './shot.js';

/** Beyond this dry mass in a volume, kg/m³, nothing is a substrate for plants. */
const mostDryDensity = 1500;

/**
 * What a bag, pot or trough holds, from its weight dry and its weight watered and drained.
 *
 * Takes both masses without the vessel (1 g to 2 t), perhaps the mass as it is now, the volume of the substrate (10 mL to 1 m³) and the temperature of its water (0
 * to 50 °C; 20 °C by default). Gives the water that it holds drained, with what it is of the volume; with the present mass the water that is in it now and what is missing; and, with the
 * volume, estimates of its pores and its air by the formulas of Acta Horticulturae 294, from 238 substrates (not for perlite and others with closed pores). Plants of some size weigh: take them off.
 * @throws InputError for input outside these limits, a drained mass not above the dry one, a present mass below the dry one, and masses that do not fit into the volume.
 * @example
 * const bag = substrateByWeight({ dryMass: '0.9 kg', drainedMass: '6.9 kg', substrateVolume: '10 L' });
 * bag.containerWater.in('L') // => 6.011
 * bag.poreShare.in('%') // => 93.3
 */
export const substrateByWeight = /* @__PURE__ */ calculation({
  id: 'substrateByWeight',
  title: 'Water and air in a substrate by weighing',
  inputs: () => ({
    dryMass: field.quantity(mass, { limits: ['1 g', '2 t'] }),
    drainedMass: field.quantity(mass, { limits: ['1 g', '2 t'] }),
    presentMass: field.optional(field.quantity(mass, { limits: ['1 g', '2 t'] })),
    substrateVolume: shot.inputs.substrateVolume,
    waterTemperature: field.withDefault(field.quantity(temperature, { limits: ['0 °C', '50 °C'] }), '20 °C'),
  }),
  outputs: () => ({
    containerWater: output.quantity(volume, 'L'),
    waterHoldingShare: output.quantity(share, '%'),
    poreShare: output.quantity(share, '%'),
    airShare: output.quantity(share, '%'),
    presentWater: output.optional(output.quantity(volume, 'L')),
    missingWater: output.optional(output.quantity(volume, 'L')),
  }),
  equation: 'water = (m_drained − m_dry) / ρ; pores = 96.72 − 0.038 VW; air = 96.72 + 0.062 VW − 100 DD (%, VW g/L dry, DD g/mL drained)',
  sources: ['definition', 'acta-horticulturae-294'],
  example: { dryMass: '0.9 kg', drainedMass: '6.9 kg', presentMass: '6.2 kg', substrateVolume: '10 L' },
  check: ({ dryMass, drainedMass, presentMass, substrateVolume, waterTemperature }, problem) => {
    const overflows = (wet: number): boolean => (wet - dryMass) / waterDensityIapws2008(waterTemperature) > substrateVolume;
    if (drainedMass <= dryMass) problem(['drainedMass'], 'a mass above the dry one', 'one that is not', 'swap them?');
    else if (overflows(drainedMass)) problem(['drainedMass'], 'water that fits into the volume of the substrate', 'more', 'was the vessel weighed with it?');
    if (dryMass > mostDryDensity * substrateVolume) problem(['dryMass'], `at most ${mostDryDensity} g for each litre of substrate`, 'more', 'was the vessel weighed with it?');
    if (presentMass !== undefined && presentMass < dryMass) problem(['presentMass'], 'no less than the dry mass', 'less');
    else if (presentMass !== undefined && overflows(presentMass)) problem(['presentMass'], 'water that fits into the volume of the substrate', 'more', 'was the vessel weighed with it?');
  },
  solve: ({ dryMass, drainedMass, presentMass, substrateVolume, waterTemperature }, { note }) => {
    const density = waterDensityIapws2008(waterTemperature);
    const containerWater = (drainedMass - dryMass) / density;
    const [dry, wet] = [dryMass / substrateVolume, drainedMass / substrateVolume];
    const air = airSpaceFromDensities(dry, wet);
    if (air < 0) note('caution', 'no-air', 'airShare', 'By its weight the substrate holds more water than it should have pores: it had not drained, or the volume is larger than given.');
    const presentWater = presentMass === undefined ? undefined : (presentMass - dryMass) / density;
    if (presentWater !== undefined && presentWater > containerWater) note('info', 'still-draining', 'presentMass', 'There is more water in it now than when drained: it drains still.');
    return {
      containerWater,
      waterHoldingShare: containerWater / substrateVolume,
      poreShare: poreSpaceFromDryDensity(dry),
      airShare: Math.max(0, air),
      presentWater,
      missingWater: presentWater === undefined ? undefined : Math.max(0, containerWater - presentWater),
    };
  },
});
