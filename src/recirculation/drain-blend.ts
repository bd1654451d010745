import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import * as output from '../calculation/output.js';
import { roundedDown, roundedUp } from '../numerics/round-outward.js';
import { noteAcidLeft } from '../solution/acidity-note.js';
import { amountsSeen } from '../solution/composition-field.js';
import { chargeBalanceOutputs } from '../solution/charge-balance-outputs.js';
import { blendAmounts, nutrientMassesOfIons } from '../solution/formulas/blending.js';
import { chargeBalanceOfIons, type IonAmounts } from '../solution/formulas/concentration.js';
import { alkalinityOfIons } from '../solution/formulas/totals.js';
import { noteImbalance } from '../solution/imbalance-note.js';
import type { Ion } from '../solution/ions.js';
import type { NutrientFormKey } from '../solution/nutrient-forms.js';
import { amountConcentration, conductivity, massConcentration, share, volume } from '../units/dimensions.js';
import { percent } from '../units/in-words.js';
import type { Quantity } from '../units/quantity.js';
import { writeNumber } from '../units/write.js';
import { additionToBlend, blendedConcentration, drainShareForConductivity, drainSharesWithin } from './formulas/drain-blend.js';
import { amountsStated, ionKeys, ionRecord } from './ion-record.js';
import { amountsIn, composition, conductivityOf, conductivityPerChargeField, millisiemens } from './loop-fields.js';

const measured = () => field.optional(field.quantity(conductivity, { limits: ['0 mS/cm', '50 mS/cm'] }));

/**
 * How much drain goes into the next feed, what the blend with fresh water holds, and what is to be added to it.
 *
 * In: the `drain` and the `sourceWater`, each by its `ions` or `nutrients`, with `drainConductivity` and `freshConductivity` where they were measured (else a
 * tenth of the cations, see `conductivityPerCharge`); the `targetConductivity` of the blend before any fertilizer, or the `drainInBlend` (0 to 100 %);
 * the `targetFeed` that it is to become, where that is to be met ion by ion; `ionLimits`; the `finalVolume` of the blend.
 * Out: the `drainInBlend`, from 0 to 100 %; with a `finalVolume` the `drainUsed` and the `freshWaterVolume`; the `blendConductivity`; `ions` and
 * `nutrients` of the blend; `toAdd` for each ion of the target, below zero where the blend holds too much already; the `chargeBalance` of what is to be added, with
 * acid as `H+` where the target states how much bicarbonate is to stay; `largestDrainInBlend`, with which nothing is too much and no limit is passed, left out
 * where there is no such share; the `decidingIon` of that.
 * Conductivities are taken to add up.
 * An InputError outside the limits, and where the drain is no stronger than the water while a conductivity is wanted.
 *
 * Source: follows from the conservation of mass.
 * @example
 * const blend = drainBlend({ drain: { ions: { 'K+': '8 mmol/L', 'Na+': '5 mmol/L' } }, sourceWater: { ions: { 'Na+': '1 mmol/L' } }, drainConductivity: '4 mS/cm', freshConductivity: '0.5 mS/cm', targetConductivity: '1.6 mS/cm', targetFeed: { ions: { 'K+': '6 mmol/L' } }, ionLimits: { 'Na+': '2 mmol/L' } });
 * blend.drainInBlend.in('%') // => 31.4286
 * blend.toAdd['K+'].in('mmol/L') // => 3.4857
 * blend.largestDrainInBlend.in('%') // => 25
 */
export const drainBlend = /* @__PURE__ */ calculation({
  id: 'drainBlend',
  title: 'Drain with fresh water for the next feed',
  inputs: () => ({
    drain: composition(),
    sourceWater: composition(),
    drainConductivity: measured(),
    freshConductivity: measured(),
    targetConductivity: field.optional(field.quantity(conductivity, { limits: ['0.01 mS/cm', '50 mS/cm'] })),
    drainInBlend: field.optional(field.share()),
    targetFeed: field.optional(composition()),
    ionLimits: field.optional(ionRecord()),
    finalVolume: field.optional(field.quantity(volume, { limits: ['10 mL', '1000 m³'] })),
    conductivityPerCharge: conductivityPerChargeField(),
  }),
  outputs: () => ({
    drainInBlend: output.quantity(share, '%'),
    drainUsed: output.optional(output.quantity(volume, 'L')),
    freshWaterVolume: output.optional(output.quantity(volume, 'L')),
    blendConductivity: output.quantity(conductivity, 'mS/cm'),
    ions: output.record<Ion, number, Quantity<'amountConcentration'>>(output.quantity(amountConcentration, 'mmol/L')),
    nutrients: output.record<NutrientFormKey, number, Quantity<'massConcentration'>>(output.quantity(massConcentration, 'mg/L')),
    toAdd: output.record<Ion, number, Quantity<'amountConcentration'>>(output.quantity(amountConcentration, 'mmol/L')),
    chargeBalance: output.group(chargeBalanceOutputs()),
    largestDrainInBlend: output.optional(output.quantity(share, '%')),
    decidingIon: output.optional(output.choice(ionKeys())),
  }),
  equation: 'x = (κ − κ(fresh)) / (κ(drain) − κ(fresh)); c = x c(drain) + (1 − x) c(fresh)',
  sources: ['definition', 'common-practice'],
  example: {
    drain: { ions: { 'K+': '3.1 mmol/L', 'Ca2+': '4 mmol/L', 'Mg2+': '1.6 mmol/L', 'Na+': '4.4 mmol/L', 'NO3-': '8.6 mmol/L', 'H2PO4-': '0.7 mmol/L', 'SO4 2-': '1.9 mmol/L', 'Cl-': '5.3 mmol/L', 'HCO3-': '0.4 mmol/L' } },
    sourceWater: { ions: { 'Na+': '1.6 mmol/L', 'Cl-': '1.8 mmol/L', 'Ca2+': '1.1 mmol/L', 'HCO3-': '2 mmol/L' } },
    drainConductivity: '2.1 mS/cm',
    freshConductivity: '0.42 mS/cm',
    targetConductivity: '0.9 mS/cm',
    targetFeed: { ions: { 'K+': '3.3 mmol/L', 'Ca2+': '2.2 mmol/L', 'Mg2+': '0.8 mmol/L', 'NO3-': '6.4 mmol/L', 'H2PO4-': '0.8 mmol/L', 'SO4 2-': '0.9 mmol/L', 'HCO3-': '0.4 mmol/L' } },
    ionLimits: { 'Na+': '3 mmol/L' },
    finalVolume: '100 L',
  },
  check: ({ targetConductivity, drainInBlend }, problem) => expectExactlyOne({ targetConductivity, drainInBlend }, ['targetConductivity', 'drainInBlend'], problem),
  solve: (seen, solving) => {
    const { note, refuse } = solving;
    const [drain, water] = [amountsSeen(seen.drain), amountsSeen(seen.sourceWater)];
    const drainConductivity = seen.drainConductivity ?? conductivityOf(drain, seen.conductivityPerCharge);
    const freshConductivity = seen.freshConductivity ?? conductivityOf(water, seen.conductivityPerCharge);
    const wanted = seen.targetConductivity;
    if (wanted !== undefined && drainConductivity <= freshConductivity) {
      refuse('drainConductivity', `a drain stronger than the water (${millisiemens(freshConductivity)})`, millisiemens(drainConductivity), 'swap them, or state drainInBlend');
    }
    const drainInBlend = seen.drainInBlend ?? drainShareForConductivity(wanted!, freshConductivity, drainConductivity);
    if (wanted !== undefined && wanted < freshConductivity) note('caution', 'water-above-target', 'targetConductivity', `The water alone is at ${millisiemens(freshConductivity)}, above the ${millisiemens(wanted)} wanted: no drain goes in.`);
    if (wanted !== undefined && wanted > drainConductivity) note('info', 'drain-below-target', 'targetConductivity', `The drain alone is at ${millisiemens(drainConductivity)}, below the ${millisiemens(wanted)} wanted: all of the blend may be drain.`);
    const amounts = blendAmounts([{ volume: drainInBlend, amounts: drain }, { volume: 1 - drainInBlend, amounts: water }]);
    const targets = amountsIn(seen.targetFeed);
    const toAdd = mapIons(targets, (target, ion) => additionToBlend(target, drainInBlend, drain[ion] ?? 0, water[ion] ?? 0));
    const acid = acidToAdd(amounts, seen.targetFeed && amountsSeen(seen.targetFeed));
    const chargeBalance = chargeBalanceOfIons({ ...mapIons(toAdd, (amount) => Math.max(0, amount)), ...acid });
    if (Object.keys(targets).length > 2) noteImbalance(chargeBalance, 'chargeBalance', note);
    const limits = amountsStated(seen.ionLimits);
    const largest = largestShare([...entriesOf(limits), ...entriesOf(targets)], drain, water);
    for (const [ion, amount] of entriesOf(toAdd)) {
      if (amount < -negligible) note('caution', 'too-much-in-blend', `toAdd.${ion}`, `The blend holds ${writeNumber(-amount)} mmol/L more ${ion} than is wanted${wayOut(largest)}.`);
    }
    for (const [ion, limit] of entriesOf(limits)) {
      const held = amounts[ion] ?? 0;
      if (held > limit + negligible) note('caution', 'limit-passed', `ions.${ion}`, `The blend holds ${writeNumber(held)} mmol/L of ${ion}, above its limit of ${writeNumber(limit)}${wayOut(largest)}.`);
    }
    const alkalinityLeft = alkalinityOfIons(amounts);
    noteAcidLeft(alkalinityLeft, note);
    return {
      drainInBlend,
      drainUsed: seen.finalVolume && drainInBlend * seen.finalVolume,
      freshWaterVolume: seen.finalVolume && (1 - drainInBlend) * seen.finalVolume,
      blendConductivity: blendedConcentration(drainInBlend, drainConductivity, freshConductivity),
      ions: amounts,
      nutrients: { ...nutrientMassesOfIons(amounts), ...(alkalinityLeft < 0 && { HCO3: 0 }) },
      toAdd,
      chargeBalance,
      largestDrainInBlend: largest.share,
      decidingIon: largest.ion,
    };
  },
});

/** What is off by less than this, mol/m3, is the rounding of figures. */
const negligible = 1e-9;

const entriesOf = (amounts: IonAmounts): readonly (readonly [Ion, number])[] => Object.entries(amounts) as [Ion, number][];

const mapIons = (amounts: IonAmounts, of: (amount: number, ion: Ion) => number): IonAmounts => Object.fromEntries(entriesOf(amounts).map(([ion, amount]) => [ion, of(amount, ion)]));

/** Shares of drain with which nothing is too much; none where something always is, and the ion that says so. */
interface DrainShares {
  readonly least: number;
  readonly share: number | undefined;
  readonly ion: Ion | undefined;
}

function wayOut({ least, share }: DrainShares): string {
  if (share === undefined) return ', and so it is at every share of drain, or something else is: the water or the target has to change';
  return `: take ${least > 0 ? `${percent(roundedUp(least))} to` : 'no more than'} ${percent(share && roundedDown(share))} drain`;
}

/** Acid that brings the bicarbonate of a blend down to what a target states. */
function acidToAdd(amounts: IonAmounts, target: IonAmounts | undefined): IonAmounts {
  const left = target?.['HCO3-'];
  return left === undefined ? {} : { 'H+': Math.max(0, alkalinityOfIons(amounts) - left) };
}

/** The shares of drain with which no ion passes its concentration. */
function largestShare(most: readonly (readonly [Ion, number])[], drain: IonAmounts, water: IonAmounts): DrainShares {
  let [low, high] = [0, 1];
  let ion: Ion | undefined;
  for (const [name, limit] of most) {
    const shares = drainSharesWithin(limit, drain[name] ?? 0, water[name] ?? 0);
    if (!shares) return { least: 0, share: undefined, ion: name };
    low = Math.max(low, shares[0]);
    if (shares[1] >= high) continue;
    [high, ion] = [shares[1], name];
  }
  return { least: low, share: low <= high ? high : undefined, ion };
}
