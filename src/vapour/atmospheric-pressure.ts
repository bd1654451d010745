import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { absolutePressure, length, pressurePerTemperature } from '../units/dimensions.js';
import { pressureAtAltitudeAshrae, pressureAtAltitudeFao56 } from '../water/altitude.js';
import { psychrometricConstantFao56 } from '../water/air-fao56.js';

/**
 * Pressure of the atmosphere at the height of the site, and the psychrometric constant of evaporation formulas that goes with it.
 *
 * Takes the elevation above sea level (-400 to 5000 m) and the model: the standard atmosphere (15 °C at sea level), or that of FAO-56
 * (20 °C; 0.3 % higher at 1800 m). Weather moves the true pressure by 3 % either way.
 * @throws InputError for input outside these limits.
 * @example
 * atmosphericPressureAtElevation({ elevation: '500 m' }).atmosphericPressure.in('kPa') // => 95.461
 */
export const atmosphericPressureAtElevation = /* @__PURE__ */ calculation({
  id: 'atmosphericPressureAtElevation',
  title: 'Pressure of the atmosphere at an elevation',
  inputs: () => ({
    elevation: field.quantity(length, { limits: ['-400 m', '5000 m'] }),
    model: field.withDefault(field.choice(['standard atmosphere', 'FAO-56']), 'standard atmosphere'),
  }),
  outputs: () => ({
    atmosphericPressure: output.quantity(absolutePressure, 'kPa'),
    psychrometricConstant: output.quantity(pressurePerTemperature, 'kPa/K'),
  }),
  equation: 'P = 101.325 kPa (1 - 2.25577e-5 z)^5.2559; FAO-56: P = 101.3 kPa ((293 - 0.0065 z)/293)^5.26; γ = 0.000665 P',
  sources: ['ashrae-2017', 'fao56'],
  example: { elevation: '420 m' },
  solve: ({ elevation, model }) => {
    const atmosphericPressure = (model === 'FAO-56' ? pressureAtAltitudeFao56 : pressureAtAltitudeAshrae)(elevation);
    return { atmosphericPressure, psychrometricConstant: psychrometricConstantFao56(atmosphericPressure) };
  },
});
