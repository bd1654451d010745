import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import { conductivity, share } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { conductivityOfPotassiumChloride, conductivityPotassiumChloridePratt2001 } from './formulas/potassium-chloride.js';
import { meterCompensations, meterFields, shownOverTrue, type SeenMeter } from './meter.js';
import { potassiumChlorideMeterStandards25 } from './potassium-chloride-standards.js';

const primary = { '0.01 mol/kg': 'molal001', '0.1 mol/kg': 'molal01', '1 mol/kg': 'molal1' } as const;
type Primary = keyof typeof primary;
type Molar = `${(typeof potassiumChlorideMeterStandards25)[number]['molar']} mol/L`;

const nameOf = ({ molar }: (typeof potassiumChlorideMeterStandards25)[number]): Molar => `${molar} mol/L`;
const standardNames = (): readonly (Primary | Molar)[] => [...(Object.keys(primary) as Primary[]), ...potassiumChlorideMeterStandards25.map(nameOf)];

/** Conductivity (S/m) at 25 °C of a standard of the tables. */
function conductivity25(name: Primary | Molar): number {
  if (name in primary) return conductivityPotassiumChloridePratt2001(primary[name as Primary], 298.15);
  return potassiumChlorideMeterStandards25.find((row) => nameOf(row) === name)!.conductivity;
}

/** Errors of a reading up to which a meter is fine, and up to which it can be set. Common practice, no source. */
const fine = 0.02;
const settable = 0.1;

const verdicts = ['fine', 'set', 'look into'] as const;
const verdictOf = (size: number): (typeof verdicts)[number] => (size <= fine ? 'fine' : size <= settable ? 'set' : 'look into');

/**
 * Whether a conductivity meter can be believed: its reading in a standard of potassium chloride against what it should show.
 *
 * In: the `standard` by name ('0.01 mol/L' is the one sold as 1413 µS/cm), or the `standardConductivity` that its bottle states for 25 °C (0.05 to
 * 120 mS/cm; tables from 0.0739 to 108.62 mS/cm); the `reading`; the `waterTemperature` of the standard (0 to 50 °C, 25 °C where not given; measured
 * from 5 °C up); what the meter makes of it, `temperatureCompensation`:
 * - `linear` (where not given): brought to 25 °C by a `temperatureCoefficient` per kelvin (0.02 where not given), as most meters do;
 * - `potassium chloride`: brought to 25 °C as a solution of 0.01 mol/kg changes;
 * - `none`: the conductivity at the temperature of the standard is shown;
 *
 * and perhaps the `cellConstant` that the meter is set to, per centimetre.
 * Out: the `expectedReading`; the `conductivity` of the standard at its temperature; the `readingError`; the `cellConstantFactor` that puts it right,
 * and with a `cellConstant` the `correctedCellConstant`; the `verdict`: `fine` to 2 % (common practice), `set` to 10 %, `look into` above, where a
 * note names what else may be wrong.
 * The tables are of potassium chloride alone: good water adds about 1 µS/cm to a weak standard. An InputError where not exactly one standard is given.
 *
 * Source: Pratt et al. 2001; Standard Methods, method 2510.
 * @example
 * const check = meterCheck({ standardConductivity: '1413 µS/cm', reading: '1.06 mS/cm', waterTemperature: '15 °C', temperatureCompensation: 'none', cellConstant: 1 });
 * check.expectedReading.in('mS/cm') // => 1.145
 * check.readingError.in('%') // => -7.45
 * check.correctedCellConstant // => 1.0805
 */
export const meterCheck = /* @__PURE__ */ calculation({
  id: 'meterCheck',
  title: 'A conductivity meter checked in a standard',
  inputs: () => ({
    standard: field.optional(field.choice(standardNames())),
    standardConductivity: field.optional(field.quantity(conductivity, { limits: ['0.05 mS/cm', '120 mS/cm'], valid: ['0.0739 mS/cm', '108.62 mS/cm'] })),
    reading: field.quantity(conductivity, { limits: ['0.1 µS/cm', '500 mS/cm'] }),
    ...meterFields(),
    cellConstant: field.optional(field.number({ limits: [0.001, 100] })),
  }),
  outputs: () => ({
    expectedReading: output.quantity(conductivity, 'mS/cm'),
    conductivity: output.quantity(conductivity, 'mS/cm'),
    readingError: output.quantity(share, '%'),
    cellConstantFactor: output.number(),
    correctedCellConstant: output.optional(output.number()),
    verdict: output.choice(verdicts),
  }),
  equation: 'K(new) = K κ(expected) / κ(reading)',
  sources: ['pratt-2001', 'standard-methods-2510', 'mccleskey-2012', 'common-practice'],
  example: { standard: '0.01 mol/L', reading: '1.37 mS/cm', waterTemperature: '21 °C', cellConstant: 1.02 },
  check: (seen, problem) => expectExactlyOne(seen, ['standard', 'standardConductivity'], problem),
  solve: ({ standard, standardConductivity = 0, reading, cellConstant, ...meter }, { note }) => {
    const here = conductivityOfPotassiumChloride(standard ? conductivity25(standard) : standardConductivity, meter.waterTemperature);
    const expectedReading = here * shownOverTrue(meter);
    const readingError = reading / expectedReading - 1;
    const size = Math.abs(readingError);
    const verdict = verdictOf(size);

    const finding = `The meter reads ${writeNumber(size * 100)} % ${readingError < 0 ? 'low' : 'high'}`;
    const other = verdict === 'fine' ? undefined : meterCompensations.find((one) => Math.abs(reading / (here * shownOverTrue({ ...meter, temperatureCompensation: one })) - 1) <= fine);
    if (other) note('caution', 'other-compensation', 'temperatureCompensation', `${finding}, but it fits a meter with ${compensationText(other, meter)}: look how yours is set before you change anything.`);
    if (verdict === 'fine') note('info', 'meter-fine', 'verdict', `${finding}: within 2 %, which needs no setting.`);
    if (verdict === 'set') note('caution', 'meter-to-set', 'verdict', `${finding}: rinse the probe, repeat in fresh standard, then set it to ${writeNumber(expectedReading * 10)} mS/cm.`);
    if (verdict === 'look into' && !other) {
      note('caution', 'meter-far-off', 'verdict', `${finding}, too much to be set away: clean the probe and shake the air out of it, take fresh standard, and look whether it is this one and whether the meter shows mS/cm.`);
    }
    return {
      expectedReading,
      conductivity: here,
      readingError,
      cellConstantFactor: expectedReading / reading,
      correctedCellConstant: cellConstant === undefined ? undefined : (cellConstant * expectedReading) / reading,
      verdict,
    };
  },
});

const compensationText = (compensation: SeenMeter['temperatureCompensation'], { temperatureCoefficient }: SeenMeter): string => ({
  none: 'no temperature compensation',
  linear: `compensation of ${writeNumber(temperatureCoefficient * 100)} % per kelvin`,
  'potassium chloride': 'compensation as potassium chloride changes',
})[compensation];
