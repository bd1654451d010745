export { conductivityAtReference } from './conductivity-at-reference.js';
export { dissolvedSolidsMeter } from './dissolved-solids-meter.js';
export { solutionConductivity } from './solution-conductivity.js';
export { dissolvedSolidsScales, type DissolvedSolidsScale } from './dissolved-solids.js';
export {
  ionicConductivitiesMcCleskey2012, ionicConductivitiesOwn, type IonicConductivityRow, type IonicConductivityTable,
} from './ionic-conductivities.js';
export { limitingConductivities25, limitingConductivitiesStandardMethods2510, type LimitingConductivityTable } from './limiting-conductivities.js';
export { potassiumChlorideMeterStandards25, potassiumChlorideStandards } from './potassium-chloride-standards.js';
export { conductivityFromDissolvedSolids, dissolvedSolidsFromConductivity } from './formulas/dissolved-solids.js';
export { limitingMolalConductivityMcCleskey2012, molalConductivityMcCleskey2012 } from './formulas/ionic-conductivity.js';
export { conductivityOfSolution, temperatureFactorOfSolution, type SolutionConductivity } from './formulas/ionic-model.js';
export {
  conductivityLimitingSum, conductivitySonneveld1999, conductivityStandardMethods2510, conductivityTenthOfCharge,
} from './formulas/quick-rules.js';
export {
  temperatureFactorIso7888, temperatureFactorLinear, temperatureFactorPotassiumChloride, type Iso7888Coefficients,
} from './formulas/temperature-reference.js';
