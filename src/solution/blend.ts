import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { alkalinity, amountConcentration, massConcentration, temperature, volume } from '../units/dimensions.js';
import type { Quantity } from '../units/quantity.js';
import { noteAcidLeft } from './acidity-note.js';
import { chargeBalanceOutputs } from './charge-balance-outputs.js';
import { amountsSeen, checkComposition, compositionFields } from './composition-field.js';
import { blendAmounts, blendTemperature, nutrientMassesOfIons } from './formulas/blending.js';
import { chargeBalanceOfIons } from './formulas/concentration.js';
import { alkalinityOfIons } from './formulas/totals.js';
import { noteImbalance } from './imbalance-note.js';
import type { Ion } from './ions.js';
import type { NutrientFormKey } from './nutrient-forms.js';

/**
 * What is in the barrel when waters and feeds are poured together: two barrels, or drain with fresh feed.
 *
 * In: `parts`, two to twenty, each a `volume` with its `ions` in mmol/L or its `nutrients` in mg/L by form, and perhaps its `waterTemperature`
 * (0 to 60 °C; of every part or of none).
 * Out: the `volume` of all; `ions`, each as it came, none lost; `nutrients` by form, with iron of every kind as `Fe` and the alkalinity as `HCO3`;
 * the `chargeBalance`; the `alkalinity`; the `waterTemperature` where those of the parts are known.
 * Volumes are taken to add up. Acid in one part uses up the alkalinity of another; more acid than that is a note of danger. Whether anything settles
 * out is not looked at: a stock with calcium and one with sulfate or phosphate do not belong together.
 * An InputError where a part does not state exactly one composition, or only some state their temperature.
 *
 * Source: follows from the conservation of mass.
 * @example
 * const barrel = blend({ parts: [
 *   { volume: '60 L', nutrients: { K: '240 mg/L', 'N-NO3': '86 mg/L' }, waterTemperature: '22 °C' },
 *   { volume: '40 L', nutrients: { Ca: '40 mg/L', HCO3: '122 mg/L' }, waterTemperature: '12 °C' },
 * ] });
 * barrel.nutrients.K.in('mg/L') // => 144
 * barrel.nutrients.Ca.in('mg/L') // => 16
 * barrel.waterTemperature.in('°C') // => 18
 */
export const blend = /* @__PURE__ */ calculation({
  id: 'blend',
  title: 'Waters and feeds poured together',
  inputs: () => ({
    parts: field.list(
      field.group({
        volume: field.quantity(volume, { limits: ['1 mL', '1000 m³'] }),
        ...compositionFields(),
        waterTemperature: field.optional(field.quantity(temperature, { limits: ['0 °C', '60 °C'] })),
      }, checkComposition),
      { limits: [2, 20] },
    ),
  }),
  outputs: () => ({
    volume: output.quantity(volume, 'L'),
    ions: output.record<Ion, number, Quantity<'amountConcentration'>>(output.quantity(amountConcentration, 'mmol/L')),
    nutrients: output.record<NutrientFormKey, number, Quantity<'massConcentration'>>(output.quantity(massConcentration, 'mg/L')),
    chargeBalance: output.group(chargeBalanceOutputs()),
    alkalinity: output.quantity(alkalinity, 'meq/L'),
    waterTemperature: output.optional(output.quantity(temperature, '°C')),
  }),
  equation: 'c = Σ V c / Σ V for every ion; t = Σ V t / Σ V',
  sources: ['definition'],
  example: {
    parts: [
      { volume: '35 L', nutrients: { 'N-NO3': '165 mg/L', P: '28 mg/L', K: '210 mg/L', Ca: '190 mg/L', Mg: '52 mg/L', S: '75 mg/L', Na: '48 mg/L', Cl: '62 mg/L' }, waterTemperature: '21 °C' },
      { volume: '65 L', nutrients: { Ca: '52 mg/L', Mg: '7 mg/L', Na: '14 mg/L', Cl: '22 mg/L', S: '9 mg/L', HCO3: '140 mg/L' }, waterTemperature: '14 °C' },
    ],
  },
  check: ({ parts }, problem) => {
    const known = parts.filter(({ waterTemperature }) => waterTemperature !== undefined).length;
    parts.forEach(({ waterTemperature }, i) => {
      if (known > 0 && waterTemperature === undefined) problem(['parts', i, 'waterTemperature'], 'the temperature of every part, or of none', 'nothing');
    });
  },
  solve: ({ parts }, { note }) => {
    const amounts = blendAmounts(parts.map((part) => ({ volume: part.volume, amounts: amountsSeen(part) })));
    const temperatures = parts.flatMap(({ volume, waterTemperature }) => (waterTemperature === undefined ? [] : [{ volume, temperature: waterTemperature }]));
    const chargeBalance = chargeBalanceOfIons(amounts);
    const remaining = alkalinityOfIons(amounts);
    noteImbalance(chargeBalance, 'chargeBalance', note);
    noteAcidLeft(remaining, note);
    return {
      volume: parts.reduce((sum, part) => sum + part.volume, 0),
      ions: amounts,
      nutrients: { ...nutrientMassesOfIons(amounts), ...(remaining < 0 && { HCO3: 0 }) },
      chargeBalance,
      alkalinity: Math.max(0, remaining),
      waterTemperature: temperatures.length > 0 ? blendTemperature(temperatures) : undefined,
    };
  },
});
