export {
  appliedVolumeForDrain, drainShareFromVolumes, drippersForVolume, runTimeForVolume, shotVolume, shotsForVolume, volumeForRunTime,
} from './formulas.js';
