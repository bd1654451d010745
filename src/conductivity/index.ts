export { blendForConductivity } from './blend-for-conductivity.js';
export { conductivityAtReference } from './conductivity-at-reference.js';
export { diluteToConductivity } from './dilute-to-conductivity.js';
export { dissolvedSolidsMeter } from './dissolved-solids-meter.js';
export { meterCheck } from './meter-check.js';
export { solutionConductivity } from './solution-conductivity.js';
export { strengthFromReading } from './strength-from-reading.js';
export { dissolvedSolidsScales, type DissolvedSolidsScale } from './dissolved-solids.js';
export {
  ionicConductivitiesMcCleskey2012, ionicConductivitiesOwn, ionicConductivitiesRefitted, type IonicConductivityRow, type IonicConductivityTable,
} from './ionic-conductivities.js';
export { limitingConductivities25, limitingConductivitiesStandardMethods2510, type LimitingConductivityTable } from './limiting-conductivities.js';
export { potassiumChlorideMeterStandards25, potassiumChlorideStandards } from './potassium-chloride-standards.js';
export { conductivitySlopes, type ConductivitySlopes } from './formulas/conductivity-slopes.js';
export { conductivityFromDissolvedSolids, dissolvedSolidsFromConductivity } from './formulas/dissolved-solids.js';
export { limitingMolalConductivityMcCleskey2012, molalConductivityMcCleskey2012 } from './formulas/ionic-conductivity.js';
export { conductivityMcCleskey2012, conductivityModelUncertainty, conductivityOfSolution, temperatureFactorOfSolution, type SolutionConductivity } from './formulas/ionic-model.js';
export {
  amountsBetween, conductivityOfIons, shareForConductivity, waterForConductivityProportional,
} from './formulas/mixing.js';
export { conductivityOfPotassiumChloride, conductivityPotassiumChloridePratt2001, type PrimaryStandard } from './formulas/potassium-chloride.js';
export {
  conductivityLimitingSum, conductivitySonneveld1999, conductivityStandardMethods2510, conductivityTenthOfCharge,
} from './formulas/quick-rules.js';
export { strengthFromConductivity, type FeedStrength } from './formulas/strength.js';
export {
  temperatureFactorIso7888, temperatureFactorLinear, temperatureFactorPotassiumChloride, type Iso7888Coefficients,
} from './formulas/temperature-reference.js';
