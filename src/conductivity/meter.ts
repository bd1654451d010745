import * as field from '../calculation/field.js';
import { temperature } from '../units/dimensions.js';
import { temperatureFactorLinear, temperatureFactorPotassiumChloride } from './formulas/temperature-reference.js';

/** Ways in which a meter brings a reading to 25 °C: what it multiplies the conductivity at the temperature of the water by. */
const compensations = {
  none: () => 1,
  linear: (t: number, coefficient: number) => temperatureFactorLinear(t, coefficient),
  'potassium chloride': (t: number) => temperatureFactorPotassiumChloride(t),
};

/** How a meter compensates for temperature. */
export type MeterCompensation = keyof typeof compensations;

export const meterCompensations = /* @__PURE__ */ Object.keys(compensations) as MeterCompensation[];

/** The water that a meter stands in, and what the meter makes of its temperature. Left out: 25 °C, where compensation makes no difference. */
export const meterFields = () => ({
  waterTemperature: field.withDefault(field.quantity(temperature, { limits: ['0 °C', '50 °C'] }), '25 °C'),
  temperatureCompensation: field.withDefault(field.choice(meterCompensations), 'linear'),
  temperatureCoefficient: field.withDefault(field.number({ limits: [0.01, 0.03] }), 0.02),
});

/** What was seen of these. */
export interface SeenMeter {
  readonly waterTemperature: number;
  readonly temperatureCompensation: MeterCompensation;
  readonly temperatureCoefficient: number;
}

/** What a meter shows, over the conductivity at the temperature of the water. */
export const shownOverTrue = ({ waterTemperature, temperatureCompensation, temperatureCoefficient }: SeenMeter): number =>
  compensations[temperatureCompensation](waterTemperature, temperatureCoefficient);
