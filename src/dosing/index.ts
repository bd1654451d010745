export {
  appliedVolumeForDrain, drainShareFromVolumes, drippersForVolume, drippersToAPlant, meanDrainFromUniformity, runTimeForVolume, shotsForVolume, shotVolume,
  timeUntilEmpty, volumeForRunTime,
} from './formulas.js';
export { runTime } from './run-time.js';
export { shot } from './shot.js';
export { waterGiven } from './water-given.js';
