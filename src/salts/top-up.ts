import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import { handedOn } from '../calculation/handed-on.js';
import * as output from '../calculation/output.js';
import { InputError, isInputError } from '../calculation/problem.js';
import { amountsSeen, checkComposition, compositionFields } from '../solution/composition-field.js';
import { blendAmounts, nutrientFormOfIon, nutrientMassesOfIons } from '../solution/formulas/blending.js';
import { ionAmountsOfNutrients, type IonAmounts } from '../solution/formulas/concentration.js';
import { alkalinityOfIons } from '../solution/formulas/totals.js';
import { ions as table, type Ion } from '../solution/ions.js';
import { massConcentration, volume } from '../units/dimensions.js';
import { quantityFromSI, unitOf } from '../units/quantity.js';
import { writeNumber } from '../units/write.js';
import { decimalQuantity } from './decimal-quantity.js';
import { checkWater, waterFields, waterOf } from './source-water.js';
import { litres } from '../units/in-words.js';
import { weighOut } from './weigh-out.js';

/** What `weighOut` takes beside the volume and the water, to be handed on to it. */
function weighingFields() {
  const { volume: _volume, water: _water, waterAlkalinity: _alkalinity, ...rest } = weighOut.inputs;
  return handedOn(rest);
}

/**
 * What to weigh into a part-full barrel that is topped up with fresh water, for the wanted feed.
 *
 * In: the `presentVolume` in the barrel and what is in it, as `ions` or `nutrients`; the `finalVolume`; the `water` that it is topped up with and
 * its `waterAlkalinity`; the rest as `weighOut` takes it: `targets`, `salts` at hand, `scales` and so on.
 * Out: the `freshWaterVolume`, and all that `weighOut` tells: the `portions` to weigh in, how each target is met, the feed that comes of it. In its notes
 * and in `exceededByWater`, the water is what is in the barrel with the fresh water poured in.
 * Volumes are taken to add up. Of a barrel whose recipe and strength are known, but not its composition, see `topUpByRecipe`.
 * An InputError where the final volume is below the present one, acid is left over when the fresh water is in, and where `weighOut` refuses.
 *
 * Source: as of `weighOut`; mass is conserved.
 * @example
 * const sheet = topUp({ presentVolume: '40 L', nutrients: { Mg: '30 mg/L' }, finalVolume: '100 L', targets: { Mg: '30 mg/L' }, salts: [{ salt: 'magnesium-sulfate-heptahydrate', purity: '98 %' }], scales: [{ division: '0.1 g' }] });
 * sheet.freshWaterVolume.in('L') // => 60
 * sheet.portions[0].mass // => 18.6 g
 */
export const topUp = /* @__PURE__ */ calculation({
  id: 'topUp',
  title: 'What to weigh into a part-full barrel that is topped up',
  inputs: () => ({
    presentVolume: field.quantity(volume, { limits: ['0 L', '1000 m³'] }),
    ...compositionFields(),
    finalVolume: field.quantity(volume, { limits: ['10 mL', '1000 m³'] }),
    ...waterFields(),
    ...weighingFields(),
  }),
  outputs: () => ({ freshWaterVolume: decimalQuantity(volume, 'L'), ...output.passedOn(weighOut.outputs) }),
  equation: 'c(before weighing) = (V c + V(fresh) c(water)) / V(final); then as weighOut',
  sources: ['definition', 'goldfarb-idnani-1983', 'rockafellar-1976', 'prohaska-2022', 'jcgm-100-2008', 'mccleskey-2012'],
  example: {
    presentVolume: '42 L',
    nutrients: { 'N-NO3': '96 mg/L', P: '22 mg/L', K: '120 mg/L', Ca: '135 mg/L', Mg: '34 mg/L', S: '62 mg/L', Na: '19 mg/L', Cl: '27 mg/L', HCO3: '30 mg/L' },
    finalVolume: '120 L',
    targets: { 'N-NO3': '105 mg/L', P: '35 mg/L', K: '180 mg/L', Ca: '120 mg/L', Mg: '30 mg/L' },
    salts: [
      { salt: 'calcium-ammonium-nitrate-decahydrate' },
      { salt: 'potassium-nitrate' },
      { salt: 'monopotassium-phosphate' },
      { salt: 'potassium-sulfate' },
      { salt: 'magnesium-sulfate-heptahydrate' },
    ],
    water: { Ca: '40 mg/L', Mg: '6 mg/L', Na: '12 mg/L', Cl: '18 mg/L', S: '8 mg/L' },
    waterAlkalinity: '2 meq/L',
    scales: [{ division: '0.1 g' }],
  },
  check: (seen, problem) => {
    checkComposition(seen, problem);
    checkWater(seen, problem);
    const { presentVolume, finalVolume } = seen;
    if (finalVolume < presentVolume) problem(['finalVolume'], `at least the ${litres(presentVolume)} that are in the barrel`, litres(finalVolume), 'swap them?');
  },
  solve: ({ presentVolume, ions, nutrients, finalVolume, water, waterAlkalinity, ...weighing }, { note, refuse }) => {
    const place = ions === undefined ? 'nutrients' : 'ions';
    const present = amountsSeen({ ions, nutrients });
    const freshWaterVolume = finalVolume - presentVolume;
    const amounts = blendAmounts([
      { volume: presentVolume, amounts: present },
      { volume: freshWaterVolume, amounts: ionAmountsOfNutrients(waterOf({ water, waterAlkalinity })) },
    ]);
    const alkalinity = alkalinityOfIons(amounts);
    if (alkalinity < 0) refuse(place, 'a barrel whose acid the fresh water uses up', `one that leaves ${writeNumber(-alkalinity)} meq/L of acid`);

    const concentrations = Object.entries(nutrientMassesOfIons(amounts)).map(([form, si]) => [form, quantityFromSI(massConcentration, si, unitOf(massConcentration, 'mg/L'))] as const);
    const attempt = weighOut.try({ ...weighing, volume: quantityFromSI(volume, finalVolume, unitOf(volume, 'L')), water: Object.fromEntries(concentrations) });
    if (!attempt.ok) throw isInputError(attempt.error) ? new InputError(attempt.error.problems.map((one) => (one.keys[0] === 'water' ? { ...one, path: place, keys: [place] } : one)), 'topUp') : attempt.error;
    const { notes, ...sheet } = attempt.value;
    for (const { severity, code, field: where, text } of notes) note(severity, code, where, text);
    if (sheet.exceededByWater.length > 0 || notes.some(({ field }) => field === 'water')) note('info', 'barrel-counts-as-water', place, 'Where a note speaks of the water, that is what is in the barrel now together with the fresh water.');
    const lost = Object.keys(present).filter((ion) => isUncounted(ion as Ion)).map((ion) => table[ion as Ion].name);
    if (lost.length > 0) note('info', 'ions-left-out', place, `Left out, because no nutrient form stands for it: ${lost.join(', ')}.`);
    return { freshWaterVolume, ...sheet };
  },
});

/** Whether an ion is neither counted by a nutrient form nor in the alkalinity. */
function isUncounted(ion: Ion): boolean {
  const one: IonAmounts = { [ion]: 1 };
  return nutrientFormOfIon(ion) === undefined && alkalinityOfIons(one) === 0;
}
