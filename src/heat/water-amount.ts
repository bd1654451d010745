/** How much water there is to warm: by its mass, or by the barrel that it fills. */
import type { AddProblem } from '../calculation/problem.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import * as field from '../calculation/field.js';
import { mass, specificHeat, temperature, volume } from '../units/dimensions.js';
import { waterDensityIapws2008 } from '../water/density.js';

/** Water and feed in a barrel, liquid. */
export const barrelTemperature = () => field.quantity(temperature, { limits: ['0 °C', '95 °C'] });

export const waterAmountFields = () => ({
  waterMass: field.optional(field.quantity(mass, { limits: ['0.1 kg', '10 t'] })),
  barrelVolume: field.optional(field.quantity(volume, { limits: ['0.1 L', '10 m³'] })),
  specificHeat: field.withDefault(field.quantity(specificHeat, { limits: ['3500 J/(kg·K)', '4300 J/(kg·K)'] }), '4186 J/(kg·K)'),
});

interface Amount {
  readonly waterMass?: number | undefined;
  readonly barrelVolume?: number | undefined;
}

/** Finds an amount that is stated twice or not at all. */
export const checkAmount = ({ waterMass, barrelVolume }: Amount, problem: AddProblem): void =>
  expectExactlyOne({ waterMass, barrelVolume }, ['waterMass', 'barrelVolume'], problem);

/** Mass of the water at a temperature in K, kg. */
export const massOf = ({ waterMass, barrelVolume = 0 }: Amount, temperature: number): number => waterMass ?? barrelVolume * waterDensityIapws2008(temperature);
