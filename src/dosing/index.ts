export {
  appliedVolumeForDrain, drainShareFromVolumes, drippersForVolume, runTimeForVolume, shotsForVolume, shotVolume, volumeForRunTime,
} from './formulas.js';
export { runTime } from './run-time.js';
export { shot } from './shot.js';
export { waterGiven } from './water-given.js';
