export { coverTransmissionOf, coverTransmissions, type CoverTransmission } from './cover-transmissions.js';
export { dailyLightFromFlux } from './daily-light-from-flux.js';
export { dailyLightFromRadiation } from './daily-light-from-radiation.js';
export { dailyLightOfReadings } from './daily-light-of-readings.js';
export { irradianceThroughDay, radiationShareBetween } from './formulas/day-course.js';
export {
  clearSkyRadiationFao56, radiationFromSunshineAngstrom, radiationFromTemperatureRangeHargreaves, type AngstromCoefficients,
} from './formulas/global-radiation.js';
export {
  dailyLightFromFluxAndTime, lampTimeForDailyLight, photonFluxFromIlluminance, photonFluxFromRadiation, photonYieldAtWavelength,
} from './formulas/photons.js';
export { sumsOfDays, type SumOfDay } from './formulas/sums-of-days.js';
export {
  daylightFromSunsetAngle, extraterrestrialRadiationBetween, extraterrestrialRadiationFao56, hourAngle, inverseRelativeDistanceFao56, seasonalCorrectionFao56,
  solarDeclinationFao56, solarNoonFao56, sunsetHourAngle,
} from './formulas/sun.js';
export { lampHours } from './lamp-hours.js';
export { luxPerPhotonFlux, luxPerPhotonFluxOf, type LuxPerPhotonFlux } from './lux-per-photon-flux.js';
export { photonYieldOf, photonYields, type PhotonYield } from './photon-yields.js';
export { radiationThroughDay } from './radiation-through-day.js';
export { solarRadiation } from './solar-radiation.js';
