import { calculation } from '../calculation/calculation.js';
import { pressureVessel } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import { atmosphericPressureField } from '../calculation/common-fields.js';
import * as output from '../calculation/output.js';
import { pressure, temperature } from '../units/dimensions.js';
import { preChargeElsewhere } from './formulas/drawdown.js';
import { inWords } from './tank-notes.js';
import { gaugeError, preCharge, switchFields, tolerableMargin, usualPreCharge } from './tank.js';

/**
 * What a pre-charge has become that was set at another height or in other weather.
 *
 * Takes the pre-charge as it was set (gauge, the tank empty of water), the atmosphere (50 to 110 kPa, that at sea level by default) and the
 * temperature of the tank (-10 to 60 °C, 20 °C by default) there and here, and perhaps the cut-in of the switch here. Gives the pre-charge now, its
 * change, and with a cut-in the pre-charge to set here and what that would have been to set there. The tank is taken as closed and empty of water.
 * @throws InputError for input outside these limits.
 * @example
 * preChargeAtSite({ preCharge: '38 psi', temperatureWhenSet: '20 °C', airTemperature: '5 °C', atmosphericPressure: '95.5 kPa', cutIn: '40 psi' }).preChargeNow.in('psi') // => 36.15
 */
export const preChargeAtSite = /* @__PURE__ */ calculation({
  id: 'preChargeAtSite',
  title: 'Pre-charge of a tank at another height and temperature',
  inputs: () => {
    const ofTank = () => field.withDefault(field.quantity(temperature, { limits: ['-10 °C', '60 °C'] }), '20 °C');
    return {
      preCharge: preCharge(),
      temperatureWhenSet: ofTank(),
      atmosphericPressureWhenSet: atmosphericPressureField(),
      airTemperature: ofTank(),
      atmosphericPressure: atmosphericPressureField(),
      cutIn: field.optional(switchFields().cutIn),
    };
  },
  outputs: () => ({
    preChargeNow: output.quantity(pressure, 'kPa'),
    preChargeChange: output.quantity(pressure, 'kPa'),
    preChargeToSet: output.optional(output.quantity(pressure, 'kPa')),
    preChargeToSetThere: output.optional(output.quantity(pressure, 'kPa')),
  }),
  equation: 'p2 = (p1 + Pa1) T2/T1 − Pa2',
  sources: ['definition', 'wsc-2007'],
  cautions: [pressureVessel],
  example: { preCharge: '38 psi', temperatureWhenSet: '20 °C', airTemperature: '5 °C', atmosphericPressure: '99.9 kPa', cutIn: '40 psi' },
  solve: ({ preCharge, temperatureWhenSet, atmosphericPressureWhenSet, airTemperature, atmosphericPressure, cutIn }, { note }) => {
    const now = preChargeElsewhere(preCharge, atmosphericPressureWhenSet, temperatureWhenSet, atmosphericPressure, airTemperature);
    const toSet = cutIn === undefined ? undefined : usualPreCharge(cutIn);
    if (now < 0) note('caution', 'pre-charge-below-atmosphere', 'preChargeNow', 'The air in the tank is below the pressure of the atmosphere here: pump it up before it is used.');
    else if (cutIn !== undefined && now > cutIn + gaugeError) note('danger', 'pre-charge-above-cut-in', 'preChargeNow', `The pre-charge is ${inWords(now)} here, ${inWords(now - cutIn)} above the cut-in: let air out down to ${inWords(usualPreCharge(cutIn))}, with no water in the tank.`);
    else if (cutIn !== undefined && cutIn - now > tolerableMargin) note('caution', 'pre-charge-low', 'preChargeNow', `The pre-charge is ${inWords(now)} here, ${inWords(cutIn - now)} below the cut-in: pump it up to ${inWords(usualPreCharge(cutIn))}, with no water in the tank.`);
    return {
      preChargeNow: now,
      preChargeChange: now - preCharge,
      preChargeToSet: toSet,
      preChargeToSetThere: toSet === undefined ? undefined : preChargeElsewhere(toSet, atmosphericPressure, airTemperature, atmosphericPressureWhenSet, temperatureWhenSet),
    };
  },
});
