import { calculation } from '../calculation/calculation.js';
import { discharge } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { amountsSeen, checkComposition, compositionFields } from '../solution/composition-field.js';
import { ionMassFromAmount, nutrientMassFromAmount } from '../solution/formulas/concentration.js';
import { area, massConcentration, massPerArea, volume } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { floorAreaField, nutrientOutputs, nutrientsByFloor } from './discharged-nutrients.js';
import { dilutionToConcentration } from './formulas/discharge.js';
import { nutrientsWithVolume } from './formulas/nutrient-mass.js';
import { amountsStated, ionRecord, type StatedIons } from './ion-record.js';
import { nitrateLimits } from './nitrate-limits.js';

/**
 * What goes with a discharge: grams of nitrogen and phosphorus, and how far its nitrate is above what drinking water may hold.
 *
 * In: the `dischargedVolume` (1 mL to 100 000 m³); what is in it, `ions` in mmol/L or mg/L of the whole ion, or `nutrients` in mg/L of the element; the `floorArea` of the plants it comes from; the
 * `nitrogenRate` that the land it is to be spread on can use, by your authority's rules.
 * Out: `nitrogenMass` (nitrate, nitrite, ammonium and urea; not that of chelates) and `phosphorusMass`, and by floor area; `nitrate` as the whole ion and `nitrateNitrogen`;
 * how many times each is above the limit of drinking water, 50 mg/L of nitrate and 10 mg/L of its nitrogen; the volumes that one volume would
 * have to become, by water free of it, to come down to them; with a `nitrogenRate` the `landArea` that the nitrogen is enough for.
 * Thinning a discharge does not make it harmless: the grams stay the same.
 * An InputError outside the limits.
 *
 * Source: US Environmental Protection Agency (10 mg/L of nitrogen); World Health Organization (50 mg/L of nitrate, seen second-hand).
 * @example
 * const gone = nutrientDischarge({ dischargedVolume: '100 L', ions: { 'NO3-': '15 mmol/L', 'H2PO4-': '1 mmol/L' } });
 * gone.nitrogenMass.in('g') // => 21.0105
 * gone.nitrate.in('mg/L') // => 930.06
 */
export const nutrientDischarge = /* @__PURE__ */ calculation({
  id: 'nutrientDischarge',
  title: 'Nitrogen and phosphorus in a discharge',
  inputs: () => ({
    dischargedVolume: field.quantity(volume, { limits: ['1 mL', '100000 m³'] }),
    ...compositionFields(),
    ions: field.optional(ionRecord()),
    floorArea: floorAreaField(),
    nitrogenRate: field.optional(field.quantity(massPerArea, { limits: ['1 kg/ha', '1000 kg/ha'] })),
  }),
  outputs: () => ({
    ...nutrientOutputs(),
    nitrate: output.quantity(massConcentration, 'mg/L'),
    nitrateNitrogen: output.quantity(massConcentration, 'mg/L'),
    timesNitrateLimit: output.number(),
    timesNitrogenLimit: output.number(),
    dilutionToNitrateLimit: output.number(),
    dilutionToNitrogenLimit: output.number(),
    landArea: output.optional(output.quantity(area, 'm²')),
  }),
  equation: 'm = V Σ c M; times over = c / limit',
  sources: ['epa-nitrate', 'who-nitrate', 'prohaska-2022'],
  cautions: [discharge],
  example: {
    dischargedVolume: '108 L',
    ions: { 'K+': '3.4 mmol/L', 'Ca2+': '3.3 mmol/L', 'Mg2+': '1.2 mmol/L', 'Na+': '5.5 mmol/L', 'NO3-': '7.1 mmol/L', 'H2PO4-': '0.9 mmol/L', 'SO4 2-': '1.8 mmol/L', 'Cl-': '6.3 mmol/L' },
    floorArea: '18 m²',
    nitrogenRate: '40 kg/ha',
  },
  check: (seen, problem) => checkComposition(compositionOf(seen), problem),
  solve: (seen, { note }) => {
    const amounts = amountsSeen(compositionOf(seen));
    const masses = nutrientsWithVolume(seen.dischargedVolume, amounts);
    const nitrate = ionMassFromAmount('NO3-', amounts['NO3-'] ?? 0);
    const nitrateNitrogen = nutrientMassFromAmount('N-NO3', amounts['NO3-'] ?? 0);
    const [timesNitrateLimit, timesNitrogenLimit] = [nitrate / nitrateLimits.nitrate.limit, nitrateNitrogen / nitrateLimits.nitrogen.limit];
    const times = Math.max(timesNitrateLimit, timesNitrogenLimit);
    if (times > 1) note('caution', 'nitrate-above-limit', 'nitrate', `It holds ${writeNumber(times)} times the nitrate that drinking water may by the stricter limit: keep it from wells, ditches and sewers, and spread it over land whose plants can use ${writeNumber(masses.nitrogenMass * 1000)} g of nitrogen, a little at a time.`);
    return {
      ...masses, ...nutrientsByFloor(masses, seen.floorArea), nitrate, nitrateNitrogen,
      timesNitrateLimit, timesNitrogenLimit,
      dilutionToNitrateLimit: dilutionToConcentration(nitrate, nitrateLimits.nitrate.limit),
      dilutionToNitrogenLimit: dilutionToConcentration(nitrateNitrogen, nitrateLimits.nitrogen.limit),
      landArea: seen.nitrogenRate && masses.nitrogenMass / seen.nitrogenRate,
    };
  },
});

/** What is in it, the ions as amounts. */
const compositionOf = ({ ions, nutrients }: { readonly ions: StatedIons | undefined; readonly nutrients: Parameters<typeof amountsSeen>[0]['nutrients'] }) => ({ ions: ions && amountsStated(ions), nutrients });
