export { airRecord } from './air-record.js';
export { airState } from './air-state.js';
export { atmosphericPressureAtElevation } from './atmospheric-pressure.js';
export { condensation } from './condensation.js';
export { coverCondensation } from './cover-condensation.js';
export { dailyVapourPressure } from './daily-vapour-pressure.js';
export { degreeDays } from './degree-days.js';
export { dewPoint } from './dew-point.js';
export { humidityForDeficit } from './humidity-for-deficit.js';
export { humidityFromWetBulb } from './humidity-from-wet-bulb.js';
export { leafVapourPressureDeficit } from './leaf-vapour-pressure-deficit.js';
export { saturationVapourPressure } from './saturation-vapour-pressure.js';
export { vapourPressureDeficitColumn } from './vapour-pressure-deficit-column.js';
export { vapourPressureDeficit } from './vapour-pressure-deficit.js';
export { wetBulbColumn } from './wet-bulb-column.js';
export { wetBulb } from './wet-bulb.js';
export { newAirRecord } from './formulas/air-record.js';
export type { AirDay, AirMeans, AirRecord, AirRecordOptions, AirTotals } from './formulas/air-totals.js';
export { airRows, dewOrFrostPoints, type AirBlock, type AirRowOptions, type AirRows } from './formulas/air-rows.js';
export { pressureAtAltitudeAshrae, pressureAtAltitudeFao56, temperatureAtAltitudeAshrae } from '../water/altitude.js';
export { innerCoverTemperature, outsideTemperatureForCover } from './formulas/cover.js';
export { deficitFromRelativeHumidity, leafDeficitFromRelativeHumidity, relativeHumidityFromLeafDeficit } from './formulas/deficit.js';
export { degreeDaysLimitedMcMasterWilhelm1997, degreeDaysMeanMcMasterWilhelm1997 } from './formulas/degree-days.js';
export { enhancementFactorBuck1981, enhancementFactorCipm2007, enhancementFactorWmo } from './formulas/enhancement.js';
export {
  dailySaturationPressureFao56, dailyVapourPressureFao56, dailyVapourPressureFromHighestHumidityFao56, dailyVapourPressureFromMeanHumidityFao56,
  dewPointFao56, psychrometricConstantFao56,
} from '../water/air-fao56.js';
export { latentHeatHarrison1963, psychrometricConstantFromLatentHeat } from './formulas/latent-heat.js';
export {
  absoluteHumidityFromVapourPressure, humidityRatioFromVapourPressure, moistAirDensity, moistAirEnthalpy, moistAirSpecificVolume,
  saturationDeficitFromHumidityRatio, specificHumidityFromHumidityRatio, vapourPressureFromAbsoluteHumidity, vapourPressureFromHumidityRatio,
} from './formulas/moist-air.js';
export { psychrometerCoefficientsFao56, vapourPressureFromPsychrometer, wetBulbOfPsychrometer } from './formulas/psychrometer.js';
export { newReadingCheck, type ReadingCheck, type ReadingCounts, type ReadingFault } from './formulas/reading-check.js';
export {
  condensationHumidity, dewPointFromRelativeHumidity, frostPointFromRelativeHumidity, relativeHumidityFromVapourPressure, vapourPressureFromRelativeHumidity,
} from './formulas/relative-humidity.js';
export { wetBulbStull2011 } from './formulas/stull-2011.js';
export { humidityRatioFromWetBulb, wetBulbFromHumidityRatio, type WetBulb } from './formulas/wet-bulb.js';
export { wetBulbsFromRelativeHumidity, type WetBulbs } from './formulas/wet-bulb-column.js';
