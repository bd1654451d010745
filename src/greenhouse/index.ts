export { assessGreenhouse } from './assess-greenhouse.js';
export type { Finding } from './finding.js';
export { reportOf } from './report.js';
