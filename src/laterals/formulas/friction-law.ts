import {
  blended, colebrookRoot, colebrookTerms, darcyFrictionFactor, frictionFactorBagarello1995, frictionFactorBlasius1913, frictionFactorChurchill1977, frictionFactorRossman2020,
  halfLn10,
} from './friction-factor.js';
import { headGradientDarcyWeisbach, headGradientHazenWilliams, headGradientWattersKeller1978, pipeReynoldsNumber } from './head-loss.js';

/** For a pipe's inside diameter (m): head lost per length of it, m/m, at a flow (m3/s, not negative), whose natural logarithm is handed on where it is known. */
export type FrictionLaw = (diameter: number) => (flow: number, logFlow?: number) => number;

/** Friction laws by name. */
export const frictionLaws = ['Darcy-Weisbach', 'Hazen-Williams', 'Watters-Keller'] as const satisfies readonly FrictionChoice['law'][];

/** Darcy friction factors that cover every regime, by the name of their turbulent part. */
export const frictionFactors = {
  'Colebrook-White': (reynolds: number, relativeRoughness: number) => darcyFrictionFactor(reynolds, relativeRoughness),
  'Swamee-Jain': frictionFactorRossman2020,
  'Churchill': frictionFactorChurchill1977,
  'Blasius': (reynolds: number) => darcyFrictionFactor(reynolds, 0, (re) => frictionFactorBlasius1913(re)),
  'Bagarello': (reynolds: number) => darcyFrictionFactor(reynolds, 0, (re) => frictionFactorBagarello1995(re)),
} as const;

/** A friction law said in data. Viscosity (kinematic) in m2/s, roughness in m. Coefficients that are not here are for a plain function of your own, a `FrictionLaw`. */
export type FrictionChoice =
  | {
    readonly law: 'Darcy-Weisbach';
    readonly viscosity: number;
    readonly roughness: number;
    readonly frictionFactor?: keyof typeof frictionFactors;
    readonly gravity?: number;
  }
  | { readonly law: 'Hazen-Williams'; readonly coefficient: number }
  | { readonly law: 'Watters-Keller'; readonly factors?: { readonly small: number; readonly large: number } };

/** The friction law that a choice in data names; Darcy-Weisbach takes Colebrook-White unless told otherwise. */
export function frictionLaw(choice: FrictionChoice): FrictionLaw {
  switch (choice.law) {
    case 'Darcy-Weisbach':
      return (diameter) => {
        const { frictionFactor = 'Colebrook-White', viscosity, roughness, gravity } = choice;
        const reynoldsAtUnitFlow = pipeReynoldsNumber(1, diameter, viscosity);
        const gradientAtUnitFactor = headGradientDarcyWeisbach(1, diameter, 1, gravity);
        const relativeRoughness = roughness / diameter;
        if (frictionFactor === 'Colebrook-White') return colebrookGradient(reynoldsAtUnitFlow, relativeRoughness, gradientAtUnitFactor);
        const factor = frictionFactors[frictionFactor];
        return (flow) => flow < 1e-200 ? 0 : factor(reynoldsAtUnitFlow * flow, relativeRoughness) * (gradientAtUnitFactor * flow * flow);
      };
    case 'Hazen-Williams':
      return (diameter) => {
        const atUnitFlow = headGradientHazenWilliams(1, diameter, choice.coefficient);
        return (flow) => atUnitFlow * flow ** 1.852;
      };
    case 'Watters-Keller':
      return (diameter) => (flow) => headGradientWattersKeller1978(flow, diameter, choice.factors);
  }
}

/** The default law, which long laterals ask for most: what depends on the pipe alone is worked out once. */
function colebrookGradient(reynoldsAtUnitFlow: number, relativeRoughness: number, gradientAtUnitFactor: number): (flow: number, logFlow?: number) => number {
  const { rough, smooth } = colebrookTerms(reynoldsAtUnitFlow, relativeRoughness);
  const turbulent = gradientAtUnitFactor * halfLn10 ** 2;
  const laminar = (64 / reynoldsAtUnitFlow) * gradientAtUnitFactor;
  return (flow, logFlow = Math.log(flow)) => {
    const reynolds = reynoldsAtUnitFlow * flow;
    if (reynolds <= 2000) return laminar * flow;
    const ratio = flow / colebrookRoot(rough * flow, smooth + logFlow);
    return blended(reynolds, laminar * flow, turbulent * ratio * ratio);
  };
}
