import { calculation } from '../calculation/calculation.js';
import { discharge } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import type { Ion } from '../solution/ions.js';
import { amountConcentration, share, volume } from '../units/dimensions.js';
import { percent } from '../units/in-words.js';
import { writeNumber } from '../units/write.js';
import { cropFields, limitsOf, noteCrop, uptakesOf } from './crop-fields.js';
import { dailyWaterUseField } from './days.js';
import { dischargePerUptake, dischargeShareOfSupply } from './formulas/discharge.js';
import { ionKeys } from './ion-record.js';
import { composition, refillOf } from './loop-fields.js';

/** From this share of the supply on a loop is hardly closed. Common practice, no source. */
const muchDischarge = 0.3;

/**
 * How much of the supply of a loop has to be let out all the time so that no ion passes its limit.
 *
 * In: the `sourceWater`, and the `freshFeed` that is made with it, which goes before the water in what it names; what the plants take up and the `ionLimits`, both by `crop` where not stated, as
 * in `ionBuildUp`; perhaps the `dailyWaterUse`, what all plants take up in a day.
 * Out: `dischargeByIon`, for each ion with a limit: `need`, none, some or impossible; the volume let out for each volume taken up and the share of the
 * supply, left out where it is impossible. The largest of them, with the `decidingIon`, and the `dailyDischarge` with a `dailyWaterUse`; left out where one is impossible.
 * An InputError outside the limits, and where no limit is stated.
 *
 * Source: follows from the salt balance at steady state.
 * @example
 * const need = dischargeNeeded({ sourceWater: { ions: { 'Na+': '1.5 mmol/L' } }, uptakeConcentrations: { 'Na+': '0.9 mmol/L' }, ionLimits: { 'Na+': '8 mmol/L' }, dailyWaterUse: '38 L' });
 * need.dischargeShare.in('%') // => 8.4507
 * need.dailyDischarge.in('L') // => 3.508
 */
export const dischargeNeeded = /* @__PURE__ */ calculation({
  id: 'dischargeNeeded',
  title: 'What has to be let out of a loop',
  inputs: () => ({
    sourceWater: composition(),
    freshFeed: field.optional(composition()),
    ...cropFields(),
    dailyWaterUse: field.optional(dailyWaterUseField()),
  }),
  outputs: () => ({
    dischargeByIon: output.list(output.group({
      ion: output.choice(ionKeys()),
      ionLimit: output.quantity(amountConcentration, 'mmol/L'),
      need: output.choice(['none', 'some', 'impossible']),
      dischargePerUptake: output.optional(output.quantity(share, '%')),
      dischargeShare: output.optional(output.quantity(share, '%')),
    })),
    decidingIon: output.optional(output.choice(ionKeys())),
    dischargePerUptake: output.optional(output.quantity(share, '%')),
    dischargeShare: output.optional(output.quantity(share, '%')),
    dailyDischarge: output.optional(output.quantity(volume, 'L')),
  }),
  equation: 'D/W = (Cw − CU) / (Cmax − Cw); share of the supply = D / (W + D)',
  sources: ['definition', 'combrink-2016'],
  cautions: [discharge],
  example: {
    sourceWater: { ions: { 'Na+': '1.6 mmol/L', 'Cl-': '1.8 mmol/L', 'Ca2+': '1.1 mmol/L' } },
    freshFeed: { ions: { 'K+': '3.3 mmol/L', 'Ca2+': '2.2 mmol/L', 'NO3-': '6.2 mmol/L' } },
    uptakeConcentrations: { 'Cl-': '0.5 mmol/L' },
    uptakeFactors: { 'Na+': 0.1 },
    ionLimits: { 'Na+': '6 mmol/L', 'Cl-': '8 mmol/L' },
    dailyWaterUse: '38 L',
  },
  check: (seen, problem) => {
    if (Object.keys(limitsOf(seen)).length === 0) problem(['ionLimits'], 'the limit of at least one ion', 'none', 'state it, or a crop of the table');
  },
  solve: (seen, solving) => {
    noteCrop(seen, solving);
    const refill = refillOf(seen);
    const uptakes = uptakesOf(seen);
    const needs = (Object.entries(limitsOf(seen)) as [Ion, number][]).map(([ion, limit]) => ({
      ion, limit, perUptake: dischargePerUptake(refill[ion] ?? 0, (uptakes[ion] ?? 0) + (seen.uptakeFactors?.[ion] ?? 0) * limit, limit),
    }));
    for (const { ion, limit, perUptake } of needs) {
      if (perUptake === Infinity) solving.note('danger', 'discharge-impossible', 'dischargeByIon', `The refill holds ${writeNumber(refill[ion]!)} mmol/L of ${ion}, no less than its limit of ${writeNumber(limit)}: no letting out helps. Bring less of it, with rain water or in the feed.`);
    }
    const most = needs.reduce((one, other) => (other.perUptake > one.perUptake ? other : one));
    const isPossible = most.perUptake < Infinity;
    const { dischargeShare = 0 } = told(most.perUptake);
    if (dischargeShare > muchDischarge) solving.note('caution', 'much-discharge', 'dischargeShare', `${percent(dischargeShare)} of the supply has to go for ${most.ion}: that is hardly a closed loop. Bring less of it, with rain water or in the feed.`);
    return {
      dischargeByIon: needs.map(({ ion, limit, perUptake }) => ({ ion, ionLimit: limit, need: needOf(perUptake), ...told(perUptake) })),
      decidingIon: most.perUptake > 0 ? most.ion : undefined,
      ...told(most.perUptake),
      dailyDischarge: isPossible && seen.dailyWaterUse !== undefined ? most.perUptake * seen.dailyWaterUse : undefined,
    };
  },
});

/** What is let out, where that is possible. */
const told = (perUptake: number) =>
  (perUptake < Infinity ? { dischargePerUptake: perUptake, dischargeShare: dischargeShareOfSupply(perUptake) } : { dischargePerUptake: undefined, dischargeShare: undefined });

const needOf = (perUptake: number): 'none' | 'some' | 'impossible' => (perUptake === 0 ? 'none' : perUptake === Infinity ? 'impossible' : 'some');
