/**
 * Time a pump runs to fill the tank from cut-in to cut-out: t = Vd/(Qp - Qd).
 *
 * Infinite where the demand takes all the pump gives: it never reaches cut-out.
 *
 * @param drawdown Vd, m3
 * @param pumpFlow Qp, m3/s, taken as constant between cut-in and cut-out
 * @param demand Qd, m3/s
 * @returns s
 */
export function pumpRunTime(drawdown: number, pumpFlow: number, demand: number): number {
  return demand < pumpFlow ? drawdown / (pumpFlow - demand) : Infinity;
}

/** Time the pump rests while the tank serves the demand: t = Vd/Qd, s; infinite without a demand. */
export function pumpRestTime(drawdown: number, demand: number): number {
  return drawdown / demand;
}

/** Rate at which a pump starts: 1/(run + rest), 1/s; none where it never stops or never starts. */
export function pumpStartRate(drawdown: number, pumpFlow: number, demand: number): number {
  return 1 / (pumpRunTime(drawdown, pumpFlow, demand) + pumpRestTime(drawdown, demand));
}

/** Mean over a whole day of a rate of starts (1/s) that goes on for a part of the day (s): 1/s. */
export function pumpStartRateOverDay(startRate: number, dailyDemandTime: number): number {
  return startRate * (dailyDemandTime / 86400);
}

/** Demand at which a pump starts most often: half its flow, m3/s. */
export function worstDemandForStarts(pumpFlow: number): number {
  return pumpFlow / 2;
}

/** Drawdown that keeps a pump of this flow (m3/s) running for a time (s) when nothing is drawn: Vd = Qp t, m3. */
export function drawdownForRunTime(pumpFlow: number, runTime: number): number {
  return pumpFlow * runTime;
}

/**
 * Drawdown that keeps starts at least a time apart at any demand: Vd = T Qp/4, m3; the worst demand is half the pump's flow.
 *
 * @param timeBetweenStarts T, s
 */
export function drawdownForTimeBetweenStarts(pumpFlow: number, timeBetweenStarts: number): number {
  return (timeBetweenStarts * pumpFlow) / 4;
}

/**
 * Drawdown that carries a peak of demand above the pump's flow, and after it still gives the pump its least run:
 * Vd = max(0, Qpeak - Qp) t_peak + Qp t_run, m3.
 *
 * Source: Pelikan, columns in a well-drilling trade journal (2004-2011).
 */
export function drawdownForPeakDemand(pumpFlow: number, peakDemand: number, peakTime: number, runTime: number): number {
  return Math.max(0, peakDemand - pumpFlow) * peakTime + drawdownForRunTime(pumpFlow, runTime);
}

/** Demand that makes a pump run and rest as it was seen to: Qd = Qp run/(run + rest), m3/s. */
export function demandFromRunAndRest(pumpFlow: number, runTime: number, restTime: number): number {
  return (pumpFlow * runTime) / (runTime + restTime);
}

/** Drawdown a tank gave when its pump was seen to run and rest for these times: Vd = Qp run rest/(run + rest), m3. */
export function drawdownFromRunAndRest(pumpFlow: number, runTime: number, restTime: number): number {
  return demandFromRunAndRest(pumpFlow, runTime, restTime) * restTime;
}
