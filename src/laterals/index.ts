export { barbEquivalentLengthWattersKeller1978 } from './formulas/barb.js';
export { emitterCoefficient, emitterFlow, emitterFromTwoFlows } from './formulas/emitter.js';
export {
  darcyFrictionFactor, frictionFactorBagarello1995, frictionFactorBlasius1913, frictionFactorChurchill1977, frictionFactorColebrook1939,
  frictionFactorDunlop1991, frictionFactorHaaland1983, frictionFactorLaminar, frictionFactorRossman2020, frictionFactorSerghides1984,
  frictionFactorSonnadGoudar2006, frictionFactorSwameeJain1976,
} from './formulas/friction-factor.js';
export { frictionLaw } from './formulas/friction-law.js';
export type { FrictionChoice, FrictionLaw } from './formulas/friction-law.js';
export {
  fittingHeadLoss, headGradientDarcyWeisbach, headGradientHazenWilliams, headGradientWattersKeller1978, pipeReynoldsNumber, pipeVelocity,
} from './formulas/head-loss.js';
export { lateralFromEndHead, lateralFromInletHead, lateralFromMeanFlow } from './formulas/lateral.js';
export type { LateralFlow, LateralLayout } from './formulas/lateral.js';
export {
  multipleOutletFactorAnwar1999, multipleOutletFactorChristiansen1942, multipleOutletFactorExact, multipleOutletFactorJensenFratini1957,
  multipleOutletFactorScaloppi1988,
} from './formulas/multiple-outlets.js';
export {
  designUniformityKellerKarmeli1974, flowVariationWuGitlin1974, lowQuarterUniformityWeighted,
  lowQuarterUniformityWhole, statisticalUniformityOfPopulation, statisticalUniformityOfSample, uniformityChristiansen1942,
} from './formulas/uniformity.js';
export { uniformityClass, uniformityClasses } from './uniformity-classes.js';
export type { UniformityClass } from './uniformity-classes.js';
export { emitterFit } from './emitter-fit.js';
export { fieldUniformity } from './field-uniformity.js';
export { lateral } from './lateral.js';
export { pipeFriction } from './pipe-friction.js';
