import type { AddProblem } from '../calculation/problem.js';
import type { Solving } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import { smallAlkalinity } from '../solution/acidity-note.js';
import { amountsSeen, checkComposition, compositionFields } from '../solution/composition-field.js';
import { strongestForDavies } from '../solution/formulas/activity.js';
import { chargeBalanceOfIons, ionicStrengthOfIons } from '../solution/formulas/concentration.js';
import { alkalinityOfIons, componentTotalsOf } from '../solution/formulas/totals.js';
import { noteImbalance } from '../solution/imbalance-note.js';
import { alkalinity, temperature, volume } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { standardAtmosphere } from '../water/constants.js';
import { waterDensityIapws2008 } from '../water/density.js';
import { closedWater, speciationOfWater, type TitratedWater } from './formulas/acid-titration.js';

/** Carbon dioxide, mol/kg, that few waters come out of the ground with. Common practice, no source. */
const muchCarbonDioxide = 0.005;

/** The water that acid goes into: what is known of it, and whether it is open to the air. */
export const acidWaterFields = () => ({
  volume: field.quantity(volume, { limits: ['10 mL', '1000 m³'] }),
  alkalinity: field.optional(field.quantity(alkalinity, { limits: ['0 meq/L', '50 meq/L'] })),
  ...compositionFields(),
  pH: field.optional(field.number({ limits: [0, 14] })),
  waterTemperature: field.withDefault(field.quantity(temperature, { limits: ['0 °C', '50 °C'], valid: ['5 °C', '35 °C'] }), '20 °C'),
  exposure: field.withDefault(field.choice(['closed', 'open']), 'closed'),
  carbonDioxide: field.withDefault(field.share({ limits: [0.0001, 0.01] }), '0.042 %'),
});

type SeenWater = Parameters<typeof amountsSeen>[0] & {
  readonly alkalinity: number | undefined;
  readonly pH: number | undefined;
  readonly waterTemperature: number;
  readonly exposure: 'closed' | 'open';
  readonly carbonDioxide: number;
};

/** Finds a water whose alkalinity or pH is not told, or told twice. */
export function checkAcidWater(seen: SeenWater, problem: AddProblem): void {
  if (seen.ions ?? seen.nutrients) checkComposition(seen, problem);
  const isCarbonStated = 'HCO3-' in amountsSeen(seen) || 'CO3 2-' in amountsSeen(seen);
  if (seen.alkalinity === undefined && !isCarbonStated) problem(['alkalinity'], 'the alkalinity, here or as bicarbonate', 'none', 'the dose hangs on it: have it titrated, or read it off the analysis as carbonate hardness');
  if (seen.alkalinity !== undefined && isCarbonStated) problem(['alkalinity'], 'the alkalinity stated once', 'alkalinity beside bicarbonate or carbonate');
  if (seen.pH === undefined && seen.exposure === 'closed') problem(['pH'], 'the pH of a closed water', 'none', "it tells how much carbon dioxide is in the water; one in balance with the air needs none: exposure 'open'");
}

/** A water as titrations take it, and how dense it is, kg/m3. */
export interface AcidWater extends TitratedWater {
  readonly density: number;
  /** pH before any acid; of an open water, in balance with the air. */
  readonly presentPH: number;
}

/** The water that was seen. An alkalinity that cannot be at its pH is refused. */
export function acidWaterOf(seen: SeenWater, { note, refuse }: Solving): AcidWater {
  const density = waterDensityIapws2008(seen.waterTemperature);
  const amounts = amountsSeen(seen);
  const strength = ionicStrengthOfIons(amounts) / density;
  const place = seen.ions ? 'ions' : 'nutrients';
  if (strength > strongestForDavies) refuse(place, `a water or a feed of at most ${strongestForDavies} mol/L of ionic strength`, `one of ${writeNumber(strength)} mol/L`, 'take the feed that a stock makes');
  const stated = seen.alkalinity ?? alkalinityOfIons(amounts);
  const balance = chargeBalanceOfIons({ ...amounts, ...(seen.alkalinity !== undefined && { 'HCO3-': stated }) });
  if (balance.cations > 0) noteImbalance(balance, place, note);

  const { 'HCO3-': _stated, ...others } = componentTotalsOf(amounts, density);
  if (seen.exposure === 'open') {
    const open = { totals: others, alkalinity: stated / density, temperature: seen.waterTemperature, carbonDioxide: seen.carbonDioxide * standardAtmosphere };
    return { ...open, density, presentPH: speciationOfWater(open).pH };
  }
  const pH = seen.pH!;
  const water = closedWater(others, stated / density, pH, seen.waterTemperature);
  if (!water) return refuse('alkalinity', `an alkalinity that can be at pH ${pH}`, `${writeNumber(stated)} meq/L`, 'that would take more carbon dioxide than water holds: is the pH of this water, and is it alkalinity and not hardness?');
  const contradiction = water.alkalinity * density - stated;
  if (contradiction > smallAlkalinity) {
    refuse('alkalinity', `at least ${writeNumber(water.alkalinity * density)} meq/L at pH ${pH} with what is dissolved`, `${writeNumber(stated)} meq/L`, 'phosphate, ammonia and a high pH have alkalinity of their own');
  }
  if ((water.totals['HCO3-'] ?? 0) - water.alkalinity > muchCarbonDioxide) {
    note('caution', 'much-carbon-dioxide', 'pH', 'pH and alkalinity tell of more carbon dioxide than all but sparkling waters hold: measure the pH where the water leaves the pipe, and look whether the alkalinity is not a hardness.');
  }
  return { ...water, density, presentPH: pH };
}
