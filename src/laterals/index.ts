export {
  barbEquivalentLengthWattersKeller1978, barbLossCoefficientBagarello1997, barbLossCoefficientUnesp, inLineLossCoefficientProvenzanoPumo2004, obstructionIndex,
} from './formulas/barb.js';
export { christiansenUniformityClogged, lowQuarterUniformityClogged, statisticalUniformityClogged } from './formulas/clogging.js';
export { compensatingEmitter, emitterCoefficient, emitterFlow, emitterFromFlows, emitterFromTwoFlows, emitterLaw, emitterViscosityFactor, plainEmitter } from './formulas/emitter.js';
export type { CompensatingEmitter, EmitterLaw, FittedEmitter, PlainEmitter } from './formulas/emitter.js';
export {
  darcyFrictionFactor, frictionFactorBagarello1995, frictionFactorBlasius1913, frictionFactorChurchill1977, frictionFactorColebrook1939,
  frictionFactorDunlop1991, frictionFactorHaaland1983, frictionFactorLaminar, frictionFactorRossman2020, frictionFactorSerghides1984,
  frictionFactorSonnadGoudar2006, frictionFactorSwameeJain1976,
} from './formulas/friction-factor.js';
export { lateralFlushedAt, lateralFlushedWith } from './formulas/flushing.js';
export type { FlushedLateral } from './formulas/flushing.js';
export { frictionLaw } from './formulas/friction-law.js';
export type { FrictionChoice, FrictionLaw } from './formulas/friction-law.js';
export {
  fittingHeadLoss, headGradientDarcyWeisbach, headGradientHazenWilliams, headGradientWattersKeller1978, pipeReynoldsNumber, pipeVelocity,
} from './formulas/head-loss.js';
export { lateralFromEndHead, lateralFromInletHead, lateralFromMeanFlow } from './formulas/lateral.js';
export type { LateralFlow } from './formulas/lateral.js';
export type { LateralLayout, LateralReach } from './formulas/stretch.js';
export { drainLine } from './formulas/line-draining.js';
export type { DrainedLine } from './formulas/line-draining.js';
export { fillLine } from './formulas/line-filling.js';
export type { FilledLine } from './formulas/line-filling.js';
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
export { inletPressureForUniformity } from './inlet-pressure-for-uniformity.js';
export { lateral } from './lateral.js';
export { lineFilling } from './line-filling.js';
export { longestLateral } from './longest-lateral.js';
export { pipeFriction } from './pipe-friction.js';
export { pipeSizes } from './pipe-sizes.js';
export type { PipeSize } from './pipe-sizes.js';
export { smallestPipe } from './smallest-pipe.js';
