import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { roundedUp } from '../numerics/round-outward.js';
import { chargeBalanceOutputs } from '../solution/charge-balance-outputs.js';
import { nutrientMassesOfIons } from '../solution/formulas/blending.js';
import { chargeBalanceOfIons, type IonAmounts } from '../solution/formulas/concentration.js';
import { noteImbalance } from '../solution/imbalance-note.js';
import type { Ion } from '../solution/ions.js';
import type { NutrientFormKey } from '../solution/nutrient-forms.js';
import { amountConcentration, massConcentration, share } from '../units/dimensions.js';
import { percent } from '../units/in-words.js';
import type { Quantity } from '../units/quantity.js';
import { writeNumber } from '../units/write.js';
import { cropFields, limitsOf, noteCrop, uptakesOf } from './crop-fields.js';
import { bleedFromShareOfSupply, dischargePerUptake, dischargeShareOfSupply } from './formulas/discharge.js';
import { ionKeys } from './ion-record.js';
import { amountsIn, composition } from './loop-fields.js';

/** A surplus below this, mol/m3, is the rounding of figures. */
const negligible = 1e-9;

/**
 * What the refill of a loop has to bring so that the composition of the loop holds: what the plants take up and what is let out, less what the water
 * brings.
 *
 * In: what the plants take up, `crop`, `uptakeConcentrations` and `uptakeFactors` as in `ionBuildUp`; the `sourceWater`; the `heldSolution`, the loop as
 * it is to stay, which is needed where uptake goes by factors or something is let out; the `dischargeShare` of the supply (0 to 90 %); `ionLimits`.
 * Out: `refill`, what it holds in all; `toAdd`, what fertilizer adds to the water, and `nutrientsToAdd` in mg/L; the `chargeBalance` of the refill; `surplusIons`,
 * those of which the water alone brings more than leaves the loop, by how much, and which `dischargePerUptake` and `dischargeShare` of the supply
 * would hold each at its limit, or at the held solution, left out where none would.
 * Bicarbonate is left to the acid.
 * An InputError outside the limits, where nothing is known of any uptake, and where the held solution lacks an ion that it is needed for.
 *
 * Source: follows from the balance.
 * @example
 * const recipe = refillRecipe({ uptakeConcentrations: { 'K+': '6 mmol/L', 'Na+': '0.9 mmol/L' }, sourceWater: { ions: { 'K+': '0.2 mmol/L', 'Na+': '1.5 mmol/L' } }, ionLimits: { 'Na+': '8 mmol/L' } });
 * recipe.toAdd['K+'].in('mmol/L') // => 5.8
 * recipe.surplusIons[0].dischargeShare.in('%') // => 8.4507
 */
export const refillRecipe = /* @__PURE__ */ calculation({
  id: 'refillRecipe',
  title: 'What the refill of a loop has to bring',
  inputs: () => ({
    ...cropFields(),
    sourceWater: composition(),
    heldSolution: field.optional(composition()),
    dischargeShare: field.withDefault(field.share({ limits: [0, 0.9] }), 0),
  }),
  outputs: () => ({
    refill: output.record<Ion, number, Quantity<'amountConcentration'>>(output.quantity(amountConcentration, 'mmol/L')),
    toAdd: output.record<Ion, number, Quantity<'amountConcentration'>>(output.quantity(amountConcentration, 'mmol/L')),
    nutrientsToAdd: output.record<NutrientFormKey, number, Quantity<'massConcentration'>>(output.quantity(massConcentration, 'mg/L')),
    chargeBalance: output.group(chargeBalanceOutputs()),
    surplusIons: output.list(output.group({
      ion: output.choice(ionKeys()),
      surplus: output.quantity(amountConcentration, 'mmol/L'),
      dischargePerUptake: output.optional(output.quantity(share, '%')),
      dischargeShare: output.optional(output.quantity(share, '%')),
    })),
  }),
  equation: 'CI = (CU + (p + b) C) / (1 + b); added = CI − Cw',
  sources: ['definition', 'combrink-2016'],
  example: {
    uptakeConcentrations: { 'K+': '3.2 mmol/L', 'Ca2+': '1.9 mmol/L', 'Mg2+': '0.7 mmol/L', 'NO3-': '6.2 mmol/L', 'H2PO4-': '0.8 mmol/L', 'SO4 2-': '0.6 mmol/L', 'Cl-': '0.5 mmol/L' },
    uptakeFactors: { 'Na+': 0.1 },
    sourceWater: { ions: { 'Na+': '1.6 mmol/L', 'Cl-': '1.8 mmol/L', 'Ca2+': '1.1 mmol/L', 'HCO3-': '2 mmol/L' } },
    heldSolution: { ions: { 'K+': '3.5 mmol/L', 'Ca2+': '2.8 mmol/L', 'Mg2+': '1 mmol/L', 'NO3-': '6.5 mmol/L', 'H2PO4-': '0.8 mmol/L', 'SO4 2-': '1.2 mmol/L', 'Na+': '5 mmol/L', 'Cl-': '6 mmol/L' } },
    ionLimits: { 'Na+': '6 mmol/L', 'Cl-': '8 mmol/L' },
    dischargeShare: '10 %',
  },
  check: (seen, problem) => {
    const uptakes = uptakesOf(seen);
    if (Object.keys({ ...uptakes, ...seen.uptakeFactors }).length === 0) problem(['uptakeConcentrations'], 'what the plants take up of at least one ion', 'none', 'state it, or a crop of the table');
    const held = amountsIn(seen.heldSolution);
    const needed = [...Object.keys(seen.uptakeFactors ?? {}), ...(seen.dischargeShare > 0 ? Object.keys(uptakes) : [])];
    for (const ion of new Set(needed)) if (!(ion in held)) problem(['heldSolution'], `the concentration of ${ion} that is to stay`, 'none', 'what is taken up in proportion or let out depends on it');
  },
  solve: (seen, solving) => {
    noteCrop(seen, solving);
    const [uptakes, limits, water, held, factors]: readonly IonAmounts[] = [uptakesOf(seen), limitsOf(seen), amountsIn(seen.sourceWater), amountsIn(seen.heldSolution), seen.uptakeFactors ?? {}];
    const bleed = bleedFromShareOfSupply(seen.dischargeShare);
    const names = [...new Set(Object.keys({ ...uptakes, ...factors, ...water, ...held }))] as Ion[];
    const parts = names.map((ion) => {
      const [uptake, factor, brought] = [uptakes![ion] ?? 0, factors![ion] ?? 0, water![ion] ?? 0];
      const leavingAt = (concentration: number | undefined): number => (concentration === undefined ? uptake : (uptake + (factor + bleed) * concentration) / (1 + bleed));
      const needed = leavingAt(held![ion]);
      return { ion, needed, brought, most: Math.max(needed, leavingAt(held![ion] ?? limits![ion])), uptakeAt: (concentration: number): number => uptake + factor * concentration };
    });
    const refill = Object.fromEntries(parts.map(({ ion, needed, brought }) => [ion, Math.max(needed, brought)]));
    const toAdd = Object.fromEntries(parts.flatMap(({ ion, needed, brought }) => (needed > brought ? [[ion, needed - brought]] : [])));
    const surplusIons = parts.flatMap(({ ion, most, brought, uptakeAt }) => {
      if (brought - most <= negligible) return [];
      const limit = limits![ion] ?? held![ion];
      const perUptake = limit === undefined ? Infinity : dischargePerUptake(brought, uptakeAt(limit), limit);
      const remedy = perUptake === Infinity ? (limit === undefined ? 'State its limit to see what has to be let out.' : 'No letting out helps, since the water is at the limit itself: find other water.')
        : perUptake === 0 ? `At its limit of ${writeNumber(limit!)} mmol/L the plants take up all of it.` : `Let out ${percent(roundedUp(dischargeShareOfSupply(perUptake), 3))} of the supply to hold it at ${writeNumber(limit!)} mmol/L.`;
      solving.note('caution', 'surplus-in-water', `surplusIons.${ion}`, `The water brings ${writeNumber(brought - most)} mmol/L more ${ion} than leaves the loop, so the loop does not hold it. ${remedy}`);
      const isPossible = perUptake < Infinity;
      return [{ ion, surplus: brought - most, dischargePerUptake: isPossible ? perUptake : undefined, dischargeShare: isPossible ? dischargeShareOfSupply(perUptake) : undefined }];
    });
    const chargeBalance = chargeBalanceOfIons(refill);
    if (names.length > 2) noteImbalance(chargeBalance, 'chargeBalance', solving.note);
    return { refill, toAdd, nutrientsToAdd: withoutAlkalinity(toAdd), chargeBalance, surplusIons };
  },
});

/** Nutrients in mg/L of what is added; phosphate as fertilizer brings it makes no alkalinity worth stating. */
function withoutAlkalinity(amounts: IonAmounts) {
  const { HCO3: _, ...nutrients } = nutrientMassesOfIons(amounts);
  return nutrients;
}
