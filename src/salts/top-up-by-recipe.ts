import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { mass, share, volume } from '../units/dimensions.js';
import { scalesAtHand } from './at-hand.js';
import { decimalQuantity } from './decimal-quantity.js';
import { refillShare, shareOfMass } from './formulas/refill.js';
import { massOnScales } from './mass-on-scales.js';
import { litres } from '../units/in-words.js';

/**
 * How much of each product a part refill of the barrel takes, from the recipe for a whole one.
 *
 * In: the `presentVolume` in the barrel (0 L to 1000 m³) and its `strength` as a share of the recipe (0 to 300 %, 100 % where not given; see
 * `strengthFromReading`); the `finalVolume`; the `recipe`: its `volume` and `portions`, each a `name` and a `mass`, as `weighOut` gives them;
 * the `scales` with their `division` and `maximumLoad`.
 * Out: the `freshWaterVolume`; the `refillShare` of the recipe; the `portions`, in decimals, in the unit of the scale, or of the recipe where there
 * is none.
 * An InputError where the final volume is below the present one, or the barrel holds more of the recipe than the final volume is to have.
 * @example
 * const refill = topUpByRecipe({ presentVolume: '65 L', finalVolume: '100 L', recipe: { volume: '100 L', portions: [{ name: 'magnesium sulfate', mass: '12.4 g' }] } });
 * refill.refillShare.in('%') // => 35
 * refill.portions[0].mass.toJSON() // => '4.34 g'
 */
export const topUpByRecipe = /* @__PURE__ */ calculation({
  id: 'topUpByRecipe',
  title: 'A recipe scaled to a part refill',
  inputs: () => ({
    presentVolume: field.writtenQuantity(volume, { limits: ['0 L', '1000 m³'] }),
    strength: field.withDefault(field.share({ limits: [0, 3] }), 1),
    finalVolume: field.writtenQuantity(volume, { limits: ['10 mL', '1000 m³'] }),
    recipe: field.group({
      volume: field.writtenQuantity(volume, { limits: ['10 mL', '1000 m³'] }),
      portions: field.list(field.group({ name: field.text(60), mass: field.writtenQuantity(mass, { limits: ['0 g', '1 t'] }) }), { limits: [1, 50] }),
    }),
    scales: field.optional(scalesAtHand()),
  }),
  outputs: () => ({
    freshWaterVolume: decimalQuantity(volume, 'L'),
    refillShare: decimalQuantity(share, '%'),
    portions: output.list(output.group({ name: output.text(), ...output.passedOn({ mass: output.quantity(mass, 'g') }) })),
  }),
  equation: 'portion = mass × (V(final) − strength × V(present)) / V(recipe)',
  sources: ['definition'],
  example: {
    presentVolume: '42 L',
    finalVolume: '120 L',
    recipe: { volume: '120 L', portions: [{ name: 'calcium nitrate', mass: '64.2 g' }, { name: 'potassium nitrate', mass: '38.5 g' }, { name: 'magnesium sulfate', mass: '12.4 g' }] },
    scales: [{ division: '0.1 g' }],
  },
  check: ({ presentVolume, finalVolume, strength }, problem) => {
    if (finalVolume.si < presentVolume.si) problem(['finalVolume'], `at least the ${litres(presentVolume.si)} that are in the barrel`, litres(finalVolume.si), 'swap them?');
    else if (finalVolume.si < strength * presentVolume.si) {
      problem(['finalVolume'], `at least ${litres(strength * presentVolume.si)}`, litres(finalVolume.si), 'the barrel holds more of the recipe than that: add water alone, or drain some first');
    }
  },
  solve: ({ presentVolume, strength, finalVolume, recipe, scales }) => {
    const part = Math.max(0, refillShare(recipe.volume.in('L'), finalVolume.in('L'), presentVolume.in('L'), strength));
    return {
      freshWaterVolume: finalVolume.si - presentVolume.si,
      refillShare: part,
      portions: recipe.portions.map(({ name, mass }) => ({ name, mass: massOnScales(shareOfMass(mass.si, part), scales, mass.unit) })),
    };
  },
});
