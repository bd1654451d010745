export {
  demandFromRunAndRest, drawdownForPeakDemand, drawdownForRunTime, drawdownForTimeBetweenStarts, drawdownFromRunAndRest, pumpRestTime, pumpRunTime,
  pumpStartRate, pumpStartRateOverDay, worstDemandForStarts,
} from './formulas/cycling.js';
export {
  acceptanceFactor, fastDrainAcceptanceFactor, plainTankAcceptanceFactor, preChargeElsewhere, preChargeFromAcceptance, preChargeFromAirShare, tankCompliance, waterShareOfTank,
} from './formulas/drawdown.js';
export type { PossiblePreCharge } from './formulas/drawdown.js';
export { pumpFlowFromPoints } from './formulas/pump-flow.js';
export type { PumpPressurePoint } from './formulas/pump-flow.js';
export { pumpPhases } from './formulas/pumped-tank.js';
export type { PumpedTank, PumpPhase, SettledPressure } from './formulas/pumped-tank.js';
export type { PressureTravel } from './formulas/pressure-travel.js';
export { motorStartLimits } from './motor-starts.js';
export type { MotorStartLimit } from './motor-starts.js';
export { drawdown } from './drawdown.js';
export { irrigationCycle } from './irrigation-cycle.js';
export { plainTank } from './plain-tank.js';
export { preChargeAtSite } from './pre-charge-at-site.js';
export { preChargeFromCycle } from './pre-charge-from-cycle.js';
export { pumpCycle } from './pump-cycle.js';
export { tankSize } from './tank-size.js';
