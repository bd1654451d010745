import type { Solving } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import { conductivity } from '../units/dimensions.js';
import { mostDays } from './days.js';
import { bleedFromShareOfSupply } from './formulas/discharge.js';
import type { DischargeRule, LoopTask } from './formulas/loop-run.js';
import { amountsStated, ionRecord, type StatedIons } from './ion-record.js';
import type { Loop } from './loop-fields.js';

/** When a loop is let out: each condition that is given counts, and with none it never is. */
export const strategyFields = () => ({
  dumpInterval: field.optional(field.count({ limits: [1, mostDays] })),
  dumpConductivity: field.optional(field.quantity(conductivity, { limits: ['0.1 mS/cm', '50 mS/cm'] })),
  dumpLimits: field.optional(ionRecord()),
  dumpShare: field.withDefault(field.share({ limits: [0.01, 1] }), 1),
  dischargeShare: field.withDefault(field.share({ limits: [0, 0.9] }), 0),
});

export interface SeenStrategy {
  readonly dumpInterval: number | undefined;
  readonly dumpConductivity: number | undefined;
  readonly dumpLimits: StatedIons | undefined;
  readonly dumpShare: number;
  readonly dischargeShare: number;
}

/** A loop under a strategy, as the formulas take it. */
export function taskOf(loop: Loop, { dumpInterval, dumpConductivity, dumpLimits, dumpShare, dischargeShare }: SeenStrategy, days: Pick<LoopTask, 'waterUses' | 'uptakeRatios'>): LoopTask {
  const rule: DischargeRule = { interval: dumpInterval, conductivity: dumpConductivity, dumpShare, bleed: loop.lost + bleedFromShareOfSupply(dischargeShare) };
  const { volume, conductivityPerCharge } = loop;
  const limits = amountsStated(dumpLimits);
  return { volume, conductivityPerCharge, rule, ions: loop.ions.map((ion, i) => ({ ...ion, dumpLimit: limits[loop.names[i]!] })), ...days };
}

/** Says so where a loop is to be let out by an ion that is not in it. */
export function noteStrategy({ dumpLimits = {} }: SeenStrategy, { names }: Loop, field: string, { note }: Solving): void {
  const absent = Object.keys(dumpLimits).filter((ion) => !names.some((name) => name === ion));
  if (absent.length > 0) note('caution', 'dump-limit-of-nothing', field, `The loop is to be let out by its ${absent.join(', ')}, which nothing brings, so that it never is by that: name ions that water or feed hold.`);
}
