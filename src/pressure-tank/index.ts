export {
  demandFromRunAndRest, drawdownForPeakDemand, drawdownForRunTime, drawdownForTimeBetweenStarts, drawdownFromRunAndRest, pumpRestTime, pumpRunTime,
  pumpStartsPerHour, worstDemandForStarts,
} from './formulas/cycling.js';
export { acceptanceFactor, fastDrainAcceptanceFactor, plainTankAcceptanceFactor, preChargeFromAcceptance, waterShareOfTank } from './formulas/drawdown.js';
export type { PossiblePreCharge } from './formulas/drawdown.js';
export { motorStartLimits } from './motor-starts.js';
export type { MotorStartLimit } from './motor-starts.js';
