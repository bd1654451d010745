import { calculation } from '../calculation/calculation.js';
import { discharge } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { readingFields, strengthOutputs, strengthSeen } from '../conductivity/strength-seen.js';
import { mass, volume } from '../units/dimensions.js';
import { checkNamedProduct, namedProductFields, nameOf, scalesAtHand } from './at-hand.js';
import { nitrogenOfNoForm, noteProducts, refuseImpossible } from './feed-notes.js';
import { dissolvePortions } from './formulas/dissolve.js';
import { shareOfMass, thinningOf } from './formulas/refill.js';
import { massOnScales } from './mass-on-scales.js';
import { productOf } from './product.js';
import { checkWater, waterFields, waterOf } from './source-water.js';
import { litres, percent } from '../units/in-words.js';

/**
 * What to do where the meter does not read what the recipe promises: how much more of every product to weigh in, or how much water to add.
 *
 * In: the `presentVolume` in the barrel (10 mL to 1000 m³) and what it holds at most, `barrelVolume`; the `recipe`: its `volume` and `portions`, each
 * with a `mass` of a `salt` or of a product known by its `label` and a `name`; the `water` that it is made with and its `waterAlkalinity`; the `reading`, `meterAccuracy`,
 * `waterTemperature` and `temperatureCompensation` as `strengthFromReading` takes them; the `scales`.
 * Out: the `strength` with the interval that meter and model leave, and the readings that it rests on, as `strengthFromReading` tells them. Where full
 * strength lies within the interval nothing is to be corrected, and a note says so. Below it, the `portions` to weigh in, on the finest
 * scale that carries them; above it, the `freshWaterVolume` to add and, where the barrel would run over, the `drainVolume` to let out first. The
 * `finalVolume` after that. Salts are taken to add no volume.
 *
 * One number cannot tell which salt is short: the correction is for a barrel that was made up too strong or too weak, not for one that plants have drawn on.
 * An InputError where `strengthFromReading` refuses, a product is not known, or the barrel is smaller than what is in it.
 *
 * Source: McCleskey, Nordstrom, Ryan and Ball 2012, inverted.
 * @example
 * const recipe = { volume: '100 L', portions: [{ salt: 'potassium-nitrate', purity: 1, mass: '100 g' }] } as const;
 * const weak = correctFeed({ presentVolume: '80 L', recipe, reading: '1.1 mS/cm', scales: [{ division: '5 g' }] });
 * weak.portions[0].mass // => 15 g
 * const strong = correctFeed({ presentVolume: '80 L', recipe, reading: '1.7 mS/cm' });
 * strong.freshWaterVolume.in('L') // => 20
 */
export const correctFeed = /* @__PURE__ */ calculation({
  id: 'correctFeed',
  title: 'A barrel put right after the reading of the meter',
  inputs: () => ({
    presentVolume: field.quantity(volume, { limits: ['10 mL', '1000 m³'] }),
    barrelVolume: field.optional(field.quantity(volume, { limits: ['10 mL', '1000 m³'] })),
    recipe: field.group({
      volume: field.quantity(volume, { limits: ['10 mL', '1000 m³'] }),
      portions: field.list(
        field.group({ ...namedProductFields(), mass: field.writtenQuantity(mass, { limits: ['0 g', '1 t'] }) }, checkNamedProduct),
        { limits: [1, 50] },
      ),
    }),
    ...waterFields(),
    ...readingFields(),
    scales: field.optional(scalesAtHand()),
  }),
  outputs: () => ({
    ...strengthOutputs(),
    portions: output.list(output.group({ name: output.text(), ...output.passedOn({ mass: output.quantity(mass, 'g') }) })),
    freshWaterVolume: output.quantity(volume, 'L'),
    drainVolume: output.quantity(volume, 'L'),
    finalVolume: output.quantity(volume, 'L'),
  }),
  equation: 'portion = (1 − s) mass V / V(recipe) where s < 1; V(fresh) = (s − 1) V where s > 1',
  sources: ['mccleskey-2012', 'parkhurst-appelo-2013', 'prohaska-2022'],
  example: {
    presentVolume: '118 L',
    barrelVolume: '125 L',
    recipe: {
      volume: '120 L',
      portions: [
        { salt: 'calcium-ammonium-nitrate-decahydrate', mass: '64 g' },
        { salt: 'potassium-nitrate', mass: '38 g' },
        { salt: 'monopotassium-phosphate', mass: '20 g' },
        { salt: 'magnesium-sulfate-heptahydrate', mass: '30 g' },
      ],
    },
    water: { Ca: '40 mg/L', Mg: '6 mg/L', Na: '12 mg/L', Cl: '18 mg/L', S: '8 mg/L' },
    waterAlkalinity: '2 meq/L',
    reading: '1.38 mS/cm',
    waterTemperature: '18 °C',
    scales: [{ division: '0.1 g' }],
  },
  check: (seen, problem) => {
    checkWater(seen, problem);
    seen.recipe.portions.forEach(({ label }, i) => {
      if (label !== undefined && nitrogenOfNoForm(label) > 0.002) problem(['recipe', 'portions', i, 'label', 'N'], 'nitrogen by its forms, N-NO3, N-NH4 and N-urea', 'nitrogen of no stated form', 'it is in no ion, so the reading that the recipe should give cannot be told');
    });
    const { presentVolume, barrelVolume = Infinity } = seen;
    if (barrelVolume < presentVolume) problem(['barrelVolume'], `at least the ${litres(presentVolume)} that are in it`, litres(barrelVolume), 'swap them?');
  },
  solve: ({ presentVolume, barrelVolume, recipe, scales, water, waterAlkalinity, ...reading }, solving) => {
    const { note } = solving;
    const weighed = recipe.portions.map((portion) => ({ ...productOf(portion), mass: portion.mass.si }));
    refuseImpossible(weighed.reduce((sum, portion) => sum + portion.mass, 0) / recipe.volume, 'recipe', solving);
    const analysis = waterOf({ water, waterAlkalinity });
    const [plain, full] = [[], weighed].map((portions) => dissolvePortions(portions, recipe.volume, analysis).amountConcentrations);
    const found = strengthSeen(reading, plain!, full!, solving, 'water');
    noteProducts(recipe.portions, 'recipe', solving);

    const { strength, lowStrength, highStrength } = found;
    const isRight = lowStrength <= 1 && highStrength >= 1;
    const missing = isRight || strength > 1 ? 0 : ((1 - strength) * presentVolume) / recipe.volume;
    const { drainVolume, freshWaterVolume } = isRight || strength < 1 ? { drainVolume: 0, freshWaterVolume: 0 } : thinningOf(presentVolume, strength, barrelVolume);
    const portions = recipe.portions.map((portion) => ({ name: nameOf(portion), mass: massOnScales(shareOfMass(portion.mass.si, missing), scales, portion.mass.unit) }));

    const unread = portions.filter(({ mass }, i) => missing > 0 && mass.si === 0 && weighed[i]!.mass > 0).map(({ name }) => name);
    if (unread.length > 0) note('caution', 'scale-too-coarse', 'scales', `The scale is too coarse for so little of ${unread.join(', ')}: dissolve a larger amount and measure out a part of that.`);
    if (isRight) note('info', 'within-uncertainty', 'strength', `The feed is between ${percent(lowStrength)} and ${percent(highStrength)} of its recipe, as near as meter and model can tell: nothing is to be corrected.`);
    if (drainVolume > 0) {
      note('caution', 'barrel-too-small', 'drainVolume', `The barrel holds no more than ${litres(barrelVolume!)}: let out ${litres(drainVolume)} first, and catch it to be used later.`);
      note(discharge.severity, discharge.code, 'drainVolume', discharge.text);
    }
    return { ...found, portions, freshWaterVolume, drainVolume, finalVolume: presentVolume - drainVolume + freshWaterVolume };
  },
});
