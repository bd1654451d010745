/** What the calculations of this folder have in common: the water, the pipe, and the friction law by name. */
import * as field from '../calculation/field.js';
import { length, temperature } from '../units/dimensions.js';
import { waterDensityIapws2008 } from '../water/density.js';
import { waterKinematicViscosity } from '../water/viscosity.js';
import type { FrictionChoice } from './formulas/friction-law.js';

/** Standard gravity, m/s² (CGPM 1901). */
export const standardGravity = 9.80665;

/** Pressure of a metre of water at a temperature (K), Pa. */
export const pressureOfHead = (waterTemperature: number): number => waterDensityIapws2008(waterTemperature) * standardGravity;

export const diameter = () => field.quantity(length, { limits: ['1 mm', '1 m'] });

/** How friction is worked out: `Darcy-Weisbach` by default, with roughness and friction factor; the other two for checking handbook designs. */
export const frictionFields = () => ({
  waterTemperature: field.withDefault(field.quantity(temperature, { limits: ['0 °C', '60 °C'] }), '20 °C'),
  friction: field.withDefault(field.choice(['Darcy-Weisbach', 'Hazen-Williams', 'Watters-Keller']), 'Darcy-Weisbach'),
  frictionFactor: field.withDefault(field.choice(['Colebrook-White', 'Swamee-Jain', 'Churchill', 'Blasius', 'Bagarello']), 'Colebrook-White'),
  roughness: field.withDefault(field.quantity(length, { limits: ['0 mm', '5 mm'] }), '0.0015 mm'),
  hazenWilliamsCoefficient: field.withDefault(field.number({ limits: [50, 200], valid: [100, 155] }), 150),
});

/** What a calculation sees of these. */
export interface SeenFriction {
  readonly waterTemperature: number;
  readonly friction: 'Darcy-Weisbach' | 'Hazen-Williams' | 'Watters-Keller';
  readonly frictionFactor: 'Colebrook-White' | 'Swamee-Jain' | 'Churchill' | 'Blasius' | 'Bagarello';
  readonly roughness: number;
  readonly hazenWilliamsCoefficient: number;
}

/** The friction law that was chosen. */
export function chosenLaw({ waterTemperature, friction, frictionFactor, roughness, hazenWilliamsCoefficient }: SeenFriction): FrictionChoice {
  switch (friction) {
    case 'Darcy-Weisbach': return { law: friction, frictionFactor, roughness, viscosity: waterKinematicViscosity(waterTemperature) };
    case 'Hazen-Williams': return { law: friction, coefficient: hazenWilliamsCoefficient };
    case 'Watters-Keller': return { law: friction };
  }
}
