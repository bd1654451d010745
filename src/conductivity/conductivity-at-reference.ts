import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { conductivity, temperature } from '../units/dimensions.js';
import { temperatureFactorIso7888, temperatureFactorLinear, temperatureFactorPotassiumChloride } from './formulas/temperature-reference.js';

/** Ways to bring a reading to the reference temperature: factor, and what it was made for. */
const compensations = {
  'potassium chloride': (t: number, reference: number): number => temperatureFactorPotassiumChloride(t, reference),
  linear: (t: number, reference: number, coefficient: number): number => temperatureFactorLinear(t, coefficient, reference),
  'ISO 7888': (t: number): number => temperatureFactorIso7888(t),
};

/**
 * What a conductivity read at the temperature of the water is at the reference temperature: for a meter that does not compensate, or does it badly.
 *
 * In: the `conductivity` as read (0 to 200 mS/cm), the `waterTemperature` (0 to 60 °C), the `referenceTemperature` (15 to 30 °C, 25 °C where not
 * given), and the `temperatureCompensation`:
 * - `potassium chloride` (where not given): as a solution of it changes; a feed does the same within 0.3 % from 5 to 35 °C;
 * - `linear`: by a `temperatureCoefficient` per kelvin (0.01 to 0.03, 0.02 where not given) of the value at the reference temperature, as most
 *   meters do; a feed comes out 3 % high at 10 °C;
 * - `ISO 7888`: the function for natural waters of 0.06 to 1 mS/cm at 0 to 35 °C, its coefficients from memory, to 25 °C only.
 *
 * Out: `conductivityAtReference` and the `temperatureFactor` between the two.
 * @throws InputError for input outside these limits.
 * @example
 * conductivityAtReference({ conductivity: '1.6 mS/cm', waterTemperature: '12 °C' }).conductivityAtReference.in('mS/cm') // => 2.111
 */
export const conductivityAtReference = /* @__PURE__ */ calculation({
  id: 'conductivityAtReference',
  title: 'Conductivity brought to the reference temperature',
  inputs: () => ({
    conductivity: field.quantity(conductivity, { limits: ['0 mS/cm', '200 mS/cm'] }),
    waterTemperature: field.quantity(temperature, { limits: ['0 °C', '60 °C'] }),
    referenceTemperature: field.withDefault(field.quantity(temperature, { limits: ['15 °C', '30 °C'] }), '25 °C'),
    temperatureCompensation: field.withDefault(field.choice(Object.keys(compensations) as (keyof typeof compensations)[]), 'potassium chloride'),
    temperatureCoefficient: field.withDefault(field.number({ limits: [0.01, 0.03] }), 0.02),
  }),
  outputs: () => ({ conductivityAtReference: output.quantity(conductivity, 'mS/cm'), temperatureFactor: output.number() }),
  equation: 'κ(reference) = f κ; f as potassium chloride changes, or 1/[1 + α (t - t(reference))], or after ISO 7888 from the viscosity of water',
  sources: ['mccleskey-2012', 'iso-7888'],
  example: { conductivity: '1.7 mS/cm', waterTemperature: '14 °C' },
  check: ({ referenceTemperature, temperatureCompensation }, problem) => {
    if (temperatureCompensation === 'ISO 7888' && referenceTemperature !== 298.15) problem(['referenceTemperature'], '25 °C with ISO 7888', 'another temperature');
  },
  solve: ({ conductivity, waterTemperature, referenceTemperature, temperatureCompensation, temperatureCoefficient }, { note }) => {
    const factor = compensations[temperatureCompensation](waterTemperature, referenceTemperature, temperatureCoefficient);
    if (temperatureCompensation === 'linear' && Math.abs(waterTemperature - referenceTemperature) > 10) {
      note('info', 'constant-coefficient', 'temperatureCoefficient', 'So far from the reference temperature a constant coefficient is off: at 10 °C and 2 % a kelvin, a feed comes out 3 % high.');
    }
    if (temperatureCompensation === 'ISO 7888') {
      note('info', 'coefficients-from-memory', 'temperatureCompensation', 'The coefficients of ISO 7888 are from memory and have not been compared with the standard.');
      if (waterTemperature > 308.15 || conductivity * factor > 0.1) {
        note('caution', 'outside-range', 'temperatureCompensation', 'ISO 7888 is for natural waters up to 1 mS/cm at 0 to 35 °C; a feed changes as potassium chloride does.');
      }
    }
    return { conductivityAtReference: conductivity * factor, temperatureFactor: factor };
  },
});
