export { airProperties, airSpecificHeat, airThermalConductivityStandardAtmosphere1976, airViscosityStandardAtmosphere1976 } from './formulas/air-heat.js';
export type { AirProperties } from './formulas/air-heat.js';
export { barrelCourse, readAir, steadyAir, swingingAir } from './formulas/barrel-run.js';
export type { Barrel, BarrelCourse, Surroundings } from './formulas/barrel-run.js';
export { barrelTransfer } from './formulas/barrel-wall.js';
export type { BarrelWall, WallTransfer } from './formulas/barrel-wall.js';
export {
  airFilmByShortRules, biotNumberBehindWall, heatTransferInSeries, nusseltCrossFlowChurchillBernstein1977, nusseltLevelPlateMcAdams1954,
  nusseltLyingCylinderChurchillChu1975, nusseltUprightPlateChurchillChu1975, radiationFilm, radiationFilmBetween, rayleighNumberOfGas,
} from './formulas/films.js';
export {
  airHeatCapacity, archedHouse, coverHeatTransferMiharaHayashi1979, flatHouse, gableHouse, infiltrationLoss, transmissionLoss,
} from './formulas/house.js';
export type { HouseSize } from './formulas/house.js';
export { heatToWarm, lumpedTemperature, lumpedTemperatureInRamp, lumpedTemperatureInSwing, lumpedTimeToReach, swingTemperature } from './formulas/lumped.js';
export type { DailySwing } from './formulas/lumped.js';
export {
  balancedRise, dischargeCoefficientTwoWayAshrae1997, equalVentArea, solarGain, stackVentilation, ventilationForRiseEp406, ventilationOfBoth, windGovernsKittas1997, windVentilation,
} from './formulas/ventilation.js';
export {
  waterEnthalpyIapws2008, waterExpansionIapws2008, waterPrandtlNumber, waterSpecificHeatIapws2008, waterThermalConductivityIapws2008,
} from './formulas/water-heat.js';
export { airLeaks } from './air-leaks.js';
export type { AirLeaks, AirLeaksName } from './air-leaks.js';
export { covers } from './covers.js';
export type { Cover, CoverName } from './covers.js';
export { fuels } from './fuels.js';
export type { Fuel, FuelName } from './fuels.js';
export { wallMaterials } from './wall-materials.js';
export type { WallMaterial, WallMaterialName } from './wall-materials.js';
export { barrelWarmUp } from './barrel-warm-up.js';
export { heatStore } from './heat-store.js';
export { heaterForBarrel } from './heater-for-barrel.js';
export { heaterSize } from './heater-size.js';
export { houseHeatLoss } from './house-heat-loss.js';
export { houseTemperature } from './house-temperature.js';
export { mixWaters } from './mix-waters.js';
export { naturalVentilation } from './natural-ventilation.js';
export { shading } from './shading.js';
export { ventArea } from './vent-area.js';
export { ventilationForRise } from './ventilation-for-rise.js';
