export { barrelPlan } from './barrel-plan.js';
export { cropCoefficientFao56, cropCoefficientsFao56, cropStages, type CoefficientCrop, type CropCoefficients } from './crop-coefficients.js';
export { cropWaterNeed } from './crop-water-need.js';
export { dailyUptakeByRadiation } from './daily-uptake-by-radiation.js';
export { drainCheck } from './drain-check.js';
export { timeUntilEmpty } from './formulas/barrel.js';
export {
  cropEvapotranspirationFao56, deficitTermBaille1994, evaporatedShareOfRadiation, evaporationFromLatentHeat, interceptedShare, radiationTermBaille1994,
  transpirationFromRadiation, volumePerPlantFromDepth, waterUptakeCarmassi2007,
} from './formulas/crop-transpiration.js';
export { appliedVolumeForDrain, drainShareFromVolumes, meanDrainFromUniformity, uptakeFromApplied } from './formulas/drain.js';
export { drainConductivityFromLeaching, leachingFractionFromConductivity, leachingRequirementRhoades1974, uptakeConductivityFromDrain } from './formulas/leaching.js';
export {
  blackBodyRadiationFao56, hourlyNetLongwaveFao56, hourlySoilHeatFao56, monthlySoilHeatFao56, monthlySoilHeatSoFarFao56, netLongwaveFao56, netShortwaveFao56,
} from './formulas/net-radiation.js';
export {
  hourlyReferenceEvapotranspirationFao56, plasticHouseEvapotranspirationFernandez2009, referenceEvapotranspirationFao56, referenceEvapotranspirationHargreaves1985,
  windSpeedAt2mFao56, windSpeedFromAerodynamicResistance, type AirAboveCrop, type PlasticHouseCoefficients,
} from './formulas/reference-evapotranspiration.js';
export { drippersForVolume, drippersToAPlant, runTimeForVolume, volumeForRunTime } from './formulas/run-time.js';
export { relativeYieldFao56, salinityStressFao56 } from './formulas/salinity.js';
export { shotsForVolume, shotVolume } from './formulas/shot.js';
export { airSpaceFromDensities, poreSpaceFromDryDensity } from './formulas/substrate.js';
export { hourlyReferenceEvapotranspiration } from './hourly-reference-evapotranspiration.js';
export { indoorEvapotranspiration } from './indoor-evapotranspiration.js';
export { irrigationDay } from './irrigation-day.js';
export { plasticHouseEvapotranspiration } from './plastic-house-evapotranspiration.js';
export { referenceEvapotranspiration } from './reference-evapotranspiration.js';
export { runTime } from './run-time.js';
export { salinityToleranceOf, salinityTolerances, type SalinityCrop, type SalinityTolerance } from './salinity-tolerances.js';
export { salinityYield } from './salinity-yield.js';
export { shot } from './shot.js';
export { soilLeaching } from './soil-leaching.js';
export { substrateByWeight } from './substrate-by-weight.js';
export { drainStrength, substrateLeaching } from './substrate-leaching.js';
export { substrateWater } from './substrate-water.js';
export { substrateOf, substrates, type Substrate, type SubstrateName } from './substrates.js';
export { transpirationByRadiationAndDeficit } from './transpiration-by-radiation-and-deficit.js';
export { transpirationByRadiationSum } from './transpiration-by-radiation-sum.js';
export { transpirationThroughDay } from './transpiration-through-day.js';
export { usualDrainFor, usualDrains, type UsualDrain } from './usual-drain.js';
export { usualDrainShare } from './usual-drain-share.js';
export { waterGiven } from './water-given.js';
