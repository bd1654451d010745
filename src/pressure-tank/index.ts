export {
  demandFromRunAndRest, drawdownForPeakDemand, drawdownForRunTime, drawdownForTimeBetweenStarts, drawdownFromRunAndRest, pumpRestTime, pumpRunTime,
  pumpStartRate, pumpStartRateOverDay, worstDemandForStarts,
} from './formulas/cycling.js';
export { acceptanceFactor, fastDrainAcceptanceFactor, plainTankAcceptanceFactor, preChargeFromAcceptance, waterShareOfTank } from './formulas/drawdown.js';
export type { PossiblePreCharge } from './formulas/drawdown.js';
export { motorStartLimits } from './motor-starts.js';
export type { MotorStartLimit } from './motor-starts.js';
export { drawdown } from './drawdown.js';
export { preChargeFromCycle } from './pre-charge-from-cycle.js';
export { pumpCycle } from './pump-cycle.js';
export { tankSize } from './tank-size.js';
