import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { amountConcentration, chargeConcentration, massConcentration } from '../units/dimensions.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import { amountFromNutrientMass, chargeFromIonAmount, ionAmountFromCharge, nutrientMassFromAmount } from './formulas/concentration.js';
import { ions } from './ions.js';
import { nutrientForms, type NutrientFormKey } from './nutrient-forms.js';

/**
 * The concentration of a nutrient in all three ways of stating it: mg/L, mmol/L and meq/L.
 *
 * In: the `nutrientForm`, and one of `massConcentration` (0 to 1 kg/L), `amountConcentration` (0 to 50 mol/L) and `chargeConcentration`
 * (up to 100 eq/L; for an anion with or without its minus sign). Masses count the element, for `HCO3` the ion; amounts and charges
 * count the ion or molecule that carries it, so a mole of urea holds two of nitrogen.
 * Out: the three, charge with its sign and none for a neutral carrier; `carrier`, the ion or molecule.
 * An InputError where not exactly one concentration is given, or a charge that the carrier cannot have.
 *
 * Source: Prohaska et al. 2022, Standard atomic weights of the elements 2021.
 * @example
 * const nitrate = convertConcentration({ nutrientForm: 'N-NO3', massConcentration: '150 mg/L' });
 * nitrate.amountConcentration.in('mmol/L') // => 10.709
 * String(nitrate.chargeConcentration) // => '-10.71 meq/L'
 */
export const convertConcentration = /* @__PURE__ */ calculation({
  id: 'convertConcentration',
  title: 'Concentration of a nutrient in mg/L, mmol/L and meq/L',
  inputs: () => ({
    nutrientForm: field.choice(Object.keys(nutrientForms) as NutrientFormKey[]),
    massConcentration: field.optional(field.quantity(massConcentration, { limits: ['0 mg/L', '1000 g/L'] })),
    amountConcentration: field.optional(field.quantity(amountConcentration, { limits: ['0 mmol/L', '50 mol/L'] })),
    chargeConcentration: field.optional(field.quantity(chargeConcentration, { limits: ['-100 eq/L', '100 eq/L'] })),
  }),
  outputs: () => ({
    massConcentration: output.quantity(massConcentration, 'mg/L'),
    amountConcentration: output.quantity(amountConcentration, 'mmol/L'),
    chargeConcentration: output.optional(output.quantity(chargeConcentration, 'meq/L')),
    carrier: output.choice(Object.keys(ions)),
  }),
  equation: 'mass = amount × molar mass of what the form counts; charge = amount × charge number of the carrier',
  sources: ['prohaska-2022'],
  example: { nutrientForm: 'Ca', massConcentration: '120 mg/L' },
  check: (seen, problem) => {
    expectExactlyOne(seen, ['massConcentration', 'amountConcentration', 'chargeConcentration'], problem);
    const { nutrientForm, chargeConcentration: charge } = seen;
    if (charge === undefined) return;
    const { name, charge: number } = ions[nutrientForms[nutrientForm].carrier];
    if (number === 0) problem(['chargeConcentration'], `a mass or an amount, since ${name} carries no charge`, 'a charge');
    if (number > 0 && charge < 0) problem(['chargeConcentration'], `zero or more for ${name}, a cation`, 'a negative charge');
  },
  solve: ({ nutrientForm, massConcentration, amountConcentration, chargeConcentration = 0 }) => {
    const { carrier } = nutrientForms[nutrientForm];
    const { charge } = ions[carrier];
    const amount = massConcentration !== undefined ? amountFromNutrientMass(nutrientForm, massConcentration)
      : amountConcentration ?? Math.abs(ionAmountFromCharge(carrier, chargeConcentration));
    return {
      massConcentration: massConcentration ?? nutrientMassFromAmount(nutrientForm, amount),
      amountConcentration: amount,
      chargeConcentration: charge === 0 ? undefined : chargeFromIonAmount(carrier, amount),
      carrier,
    };
  },
});
