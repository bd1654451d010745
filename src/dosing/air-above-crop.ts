/** What Penman and Monteith take of the air above a crop, as results show it. */
import * as output from '../calculation/output.js';
import { absolutePressure, pressure, pressurePerTemperature, velocity } from '../units/dimensions.js';

export const airAboveCropOutputs = () => ({
    windSpeedAt2m: output.quantity(velocity, 'm/s'),
    atmosphericPressure: output.quantity(absolutePressure, 'kPa'),
    saturationSlope: output.quantity(pressurePerTemperature, 'kPa/K'),
    psychrometricConstant: output.quantity(pressurePerTemperature, 'kPa/K'),
    saturationVapourPressure: output.quantity(absolutePressure, 'kPa'),
    vapourPressure: output.quantity(absolutePressure, 'kPa'),
    vapourPressureDeficit: output.quantity(pressure, 'kPa'),
});
