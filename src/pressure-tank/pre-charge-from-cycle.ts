import { calculation } from '../calculation/calculation.js';
import { backflow, mainsElectricity, pressureVessel } from '../calculation/caution.js';
import type { AddNote } from '../calculation/note.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { flow, pressure, time, volume } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { demandFromRunAndRest, drawdownFromRunAndRest } from './formulas/cycling.js';
import { acceptanceFactor, preChargeFromAcceptance } from './formulas/drawdown.js';
import { drawdownMoves, inWords } from './tank-notes.js';
import { checkSwitch, drawdownOf, gaugeError, pumpFlow, switchFields, tankVolume, tolerableMargin, usualPreCharge, type Tank } from './tank.js';

/** Exponent of the gas where its air cools in a fast draw: as far as the pre-charges that a cycle allows are taken. */
const cooling = 1.2;

const conditions = ['fine', 'air lost', 'waterlogged', 'pre-charge too high', 'readings do not fit'] as const;
type Condition = (typeof conditions)[number];

/** What is wrong with a tank of a pre-charge. */
function conditionOf(preCharge: number, cutIn: number): Condition {
  if (preCharge > cutIn + gaugeError) return 'pre-charge too high';
  if (preCharge < gaugeError) return 'waterlogged';
  return cutIn - preCharge > tolerableMargin ? 'air lost' : 'fine';
}

/** A gauge pressure, Pa, without what rounding leaves of one that is none. */
const withoutDust = (pressure: number): number => (Math.abs(pressure) < 1e-6 ? 0 : pressure);

/** What a cycle shows of a tank. */
interface Shown {
  readonly condition: Condition;
  /** Pre-charge that it shows, and those that would do as well, gauge, Pa. */
  readonly preCharge: number;
  readonly lowestPreCharge: number;
  readonly highestPreCharge: number;
  readonly drawdown: number;
}

/** The tank that a drawdown shows, with the pump's flow so far off and the air perhaps cooling; `isAbove` where the pressure is seen to drop away. */
function shownBy(drawdown: number, tank: Omit<Tank, 'preCharge'>, uncertainty: number, isAbove: boolean): Shown | undefined {
  const { cutIn, cutOut, atmosphericPressure: air } = tank;
  const share = drawdown / tank.tankVolume;
  if (share * (1 - uncertainty) > acceptanceFactor(cutIn, cutIn, cutOut, air)) return undefined;
  const at = (acceptance: number, exponent: number): number => {
    const { belowCutIn, aboveCutIn } = preChargeFromAcceptance(acceptance, cutIn, cutOut, air, exponent);
    return (isAbove ? aboveCutIn : belowCutIn) ?? cutIn;
  };
  const [preCharge, slow, fast] = [at(share, 1), at(share * (1 - uncertainty), 1), at(share * (1 + uncertainty), cooling)];
  return { condition: conditionOf(preCharge, cutIn), preCharge, lowestPreCharge: Math.min(slow, fast), highestPreCharge: Math.max(slow, fast), drawdown };
}

/** Says what is wrong and what to do about it. */
function noteCondition({ condition, preCharge, lowestPreCharge, highestPreCharge, drawdown }: Shown, usualDrawdown: number, cutIn: number, uncertainty: number, above: number | undefined, note: AddNote): void {
  if (condition === 'fine') return;
  const isSure = conditionOf(lowestPreCharge, cutIn) !== 'fine' && conditionOf(highestPreCharge, cutIn) !== 'fine';
  const doubt = isSure ? '' : ` A pump ${writeNumber(uncertainty * 100)} % off its flow, or air that cools in a fast draw, could show the same of a tank that is fine: time the pump into a bucket first.`;
  const remedy = `With the pressure off and no water in the tank, set ${inWords(usualPreCharge(cutIn))}; ${drawdownMoves(drawdown, usualDrawdown)}.${doubt}`;
  const severity = isSure ? 'caution' : 'info';
  const orAbove = above === undefined ? '' : ` If the pressure drops away before the pump starts, it is ${inWords(above)} instead, above the cut-in.`;
  if (condition === 'pre-charge too high') note(severity, 'pre-charge-too-high', 'preChargeAboveCutIn', `The pre-charge must be about ${inWords(preCharge)}, ${inWords(preCharge - cutIn)} above the cut-in, so that the tank is empty before the pump starts. ${remedy}`);
  else if (condition === 'air lost') note(severity, 'air-lost', 'preChargeBelowCutIn', `The pre-charge must be about ${inWords(preCharge)}, ${inWords(cutIn - preCharge)} below the cut-in: air is lost.${orAbove} ${remedy}`);
  else note(severity, 'waterlogged', 'preChargeBelowCutIn', `The tank holds less air than it would open, so it is waterlogged.${orAbove} Water at the air valve means that the bladder is gone, and needs another. ${remedy}`);
}

/**
 * The pre-charge that a tank must have, from how long its pump is seen to run and to rest while a steady amount is drawn.
 *
 * Takes the volume of the tank, the switch (gauge), the atmosphere of the site, the flow of the pump and by how much it may be off (0 to 50 %; 10 %
 * by default), the run and the rest by the watch (1 s to 1 d), and whether the pressure is seen to drop away just before the pump starts (taken as
 * no). Gives the demand and the drawdown that they show, and the pre-charges that explain it with air that keeps its temperature: one below the
 * cut-in, which is what a tank that has lost air shows, and one above it; the condition of the tank by one of them, the lowest and highest pre-charge that
 * would do as well (the flow off, the air cooling to exponent 1.2), and what the usual pre-charge would give. A pre-charge below zero stands for less
 * air than the tank would hold open: it is waterlogged.
 * @throws InputError for input outside these limits, and for a cut-in that is not below the cut-out.
 * @example
 * preChargeFromCycle({ tankVolume: '18 L', cutIn: '40 psi', cutOut: '60 psi', pumpFlow: '13 L/min', runTime: '16 s', restTime: '90 s' }).preChargeBelowCutIn?.in('psi') // => 18.71
 */
export const preChargeFromCycle = /* @__PURE__ */ calculation({
  id: 'preChargeFromCycle',
  title: 'Pre-charge of a tank from the run and rest of its pump',
  inputs: () => ({
    tankVolume: tankVolume(),
    ...switchFields(),
    pumpFlow: pumpFlow(),
    pumpFlowUncertainty: field.withDefault(field.share({ limits: [0, 0.5] }), '10 %'),
    runTime: field.quantity(time, { limits: ['1 s', '1 d'] }),
    restTime: field.quantity(time, { limits: ['1 s', '1 d'] }),
    pressureDropsAway: field.withDefault(field.flag(), false),
  }),
  outputs: () => ({
    demand: output.quantity(flow, 'L/min'),
    drawdown: output.quantity(volume, 'L'),
    preChargeBelowCutIn: output.optional(output.quantity(pressure, 'kPa')),
    preChargeAboveCutIn: output.optional(output.quantity(pressure, 'kPa')),
    condition: output.choice(conditions),
    lowestPreCharge: output.optional(output.quantity(pressure, 'kPa')),
    highestPreCharge: output.optional(output.quantity(pressure, 'kPa')),
    usualDrawdown: output.quantity(volume, 'L'),
  }),
  equation: 'V_d = Q_p t_run t_rest / (t_run + t_rest); P1 = (V_d / V) / (1/P2 − 1/P3), or (1 − V_d / V) P3 where that is above P2; absolute',
  sources: ['pelikan-columns'],
  cautions: [pressureVessel, mainsElectricity, backflow],
  example: { tankVolume: '18 L', cutIn: '40 psi', cutOut: '60 psi', pumpFlow: '13 L/min', runTime: '16 s', restTime: '90 s' },
  check: checkSwitch,
  solve: ({ runTime, restTime, pumpFlow, pumpFlowUncertainty, pressureDropsAway, ...tank }, { note }) => {
    const { cutIn, cutOut, tankVolume, atmosphericPressure } = tank;
    const drawdown = drawdownFromRunAndRest(pumpFlow, runTime, restTime);
    const { belowCutIn, aboveCutIn } = preChargeFromAcceptance(drawdown / tankVolume, cutIn, cutOut, atmosphericPressure);
    const usualDrawdown = drawdownOf({ ...tank, preCharge: usualPreCharge(cutIn) });
    const shown = shownBy(drawdown, tank, pumpFlowUncertainty, pressureDropsAway);
    if (shown) noteCondition(shown, usualDrawdown, cutIn, pumpFlowUncertainty, pressureDropsAway ? undefined : aboveCutIn, note);
    else note('caution', 'no-pre-charge-fits', 'drawdown', 'The tank gave more than any pre-charge allows: the flow of the pump, the switch or the volume of the tank is not as stated, or the draw was not steady.');
    return {
      demand: demandFromRunAndRest(pumpFlow, runTime, restTime),
      drawdown,
      preChargeBelowCutIn: belowCutIn && withoutDust(belowCutIn),
      preChargeAboveCutIn: aboveCutIn,
      condition: shown?.condition ?? 'readings do not fit',
      lowestPreCharge: shown?.lowestPreCharge,
      highestPreCharge: shown?.highestPreCharge,
      usualDrawdown,
    };
  },
});
