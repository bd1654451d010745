/** What the calculations of this folder have in common: the water, the pipe, and the friction law by name. */
import type { Solving } from '../calculation/calculation.js';
import type { SeenFields } from '../calculation/field-types.js';
import * as field from '../calculation/field.js';
import { length, temperature } from '../units/dimensions.js';
import { waterDensityIapws2008 } from '../water/density.js';
import { writeNumber } from '../units/write.js';
import { waterKinematicViscosity } from '../water/viscosity.js';
import { frictionFactors, frictionLaws, type FrictionChoice } from './formulas/friction-law.js';
import { pipeReynoldsNumber, standardGravity } from './formulas/head-loss.js';

/** Pressure of a metre of water at a temperature (K), Pa. */
export const pressureOfHead = (waterTemperature: number): number => waterDensityIapws2008(waterTemperature) * standardGravity;

export const diameter = () => field.quantity(length, { limits: ['1 mm', '1 m'] });

export const waterTemperature = () => field.withDefault(field.quantity(temperature, { limits: ['0 °C', '60 °C'] }), '20 °C');

/** How friction is worked out: `Darcy-Weisbach` by default, with roughness and friction factor; the other two for checking handbook designs. */
export const frictionFields = () => ({
  waterTemperature: waterTemperature(),
  friction: field.withDefault(field.choice(frictionLaws), 'Darcy-Weisbach'),
  frictionFactor: field.withDefault(field.choice(Object.keys(frictionFactors) as (keyof typeof frictionFactors)[]), 'Colebrook-White'),
  roughness: field.withDefault(field.quantity(length, { limits: ['0 mm', '5 mm'] }), '0.0015 mm'),
  hazenWilliamsCoefficient: field.withDefault(field.number({ limits: [50, 200], valid: [100, 155] }), 150),
});

/** What a calculation sees of these. */
export type SeenFriction = SeenFields<ReturnType<typeof frictionFields>>;

/** Above this, m/s, small plastic pipes surge and wear. Common practice, no source. */
export const fastWater = 1.5;

/** No pump of a garden drives water through a pipe faster than this, m/s. */
const impossibleVelocity = 30;

/** Refuses a velocity that cannot be. */
export function refuseRacing(velocity: number, refuse: Solving['refuse'], path = 'diameter'): void {
  if (velocity > impossibleVelocity) refuse(path, 'a pipe that can carry this flow', `one in which the water runs at ${writeNumber(velocity)} m/s`, 'are the units right?');
}

/** Roughest wall that the friction laws know, as a share of the diameter. */
const roughestWall = 0.05;

/** Finds a roughness that no friction law knows. */
export const checkRoughness: field.GroupCheck<Pick<SeenFriction, 'roughness'> & { readonly diameter: number }> = ({ roughness, diameter }, problem) => {
  if (roughness > roughestWall * diameter) problem(['roughness'], 'at most a twentieth of the diameter', `${writeNumber(roughness / diameter)} of it`, 'are the units right?');
};

/** Reynolds number of the water in a pipe. */
export const reynoldsNumberOf = (flow: number, diameter: number, waterTemperature: number): number => pipeReynoldsNumber(flow, diameter, waterKinematicViscosity(waterTemperature));

/** A pipe with the friction law that was chosen for it. */
type PipeWithLaw = Pick<SeenFriction, 'friction'> & { readonly diameter: number };

/** Refuses a velocity that cannot be, says so where it is high, and where the friction law does not suit the flow. */
export function noteFlow(path: 'velocity' | 'inletVelocity', velocity: number, reynoldsNumber: number, pipe: PipeWithLaw, solving: Solving): void {
  refuseRacing(velocity, solving.refuse);
  if (velocity > fastWater) solving.note('caution', 'fast-water', path, `The water runs at ${writeNumber(velocity)} m/s; above ${fastWater} m/s small pipes surge and wear: take a larger one.`);
  noteFrictionLaw(reynoldsNumber, pipe, solving);
}

/** Says so where the friction law does not suit the flow. */
export function noteFrictionLaw(reynoldsNumber: number, { friction, diameter }: PipeWithLaw, { note }: Solving): void {
  if (friction === 'Hazen-Williams' && diameter < 0.05) {
    note('caution', 'small-pipe', 'friction', 'Hazen-Williams was made for pipes of 50 mm and more: in drip tubing it reads 8 to 33 % low.');
  } else if (friction !== 'Darcy-Weisbach' && reynoldsNumber < 4000) {
    note('caution', 'not-turbulent', 'friction', `${friction} knows turbulent flow only, and at a Reynolds number of ${writeNumber(reynoldsNumber)} this is none.`);
  }
}

/** The friction law that was chosen. */
export function chosenLaw({ waterTemperature, friction, frictionFactor, roughness, hazenWilliamsCoefficient }: SeenFriction): FrictionChoice {
  switch (friction) {
    case 'Darcy-Weisbach': return { law: friction, frictionFactor, roughness, viscosity: waterKinematicViscosity(waterTemperature) };
    case 'Hazen-Williams': return { law: friction, coefficient: hazenWilliamsCoefficient };
    case 'Watters-Keller': return { law: friction };
  }
}
