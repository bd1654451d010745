import * as field from '../calculation/field.js';
import type { WrittenFields } from '../calculation/field-types.js';
import { handedOn } from '../calculation/handed-on.js';
import * as output from '../calculation/output.js';
import { solutionConductivity } from '../conductivity/index.js';
import { acidDose, stockTanks, waterAnalysis, weighOut } from '../salts/index.js';
import { saturation, type NutrientFormKey } from '../solution/index.js';
import { massConcentration } from '../units/dimensions.js';
import { quantityFromSI, unitOf, type Quantity } from '../units/quantity.js';
import type { Assessor } from './attempt.js';
import { barrelFields } from './barrel-day.js';

/** Water whose temperature is not told. */
export const usualWaterTemperature = '20 °C';

/** What the feed is described by: the water, the barrel, what is wanted of it, what there is to make it from; perhaps acid and stock tanks. */
export function feedFields() {
  const { volume, water, waterAlkalinity, ...weighing } = weighOut.inputs;
  const { hardness, calciumShare, measuredConductivity, pH: pHOfWater } = waterAnalysis.inputs;
  const { acid, purity, productDensity, targetPH, targetAlkalinity, exposure } = acidDose.inputs;
  const { pH: pHOfFeed, waterTemperature, dilution, stockVolume, tanksAvailable, tankTemperature } = stockTanks.inputs;
  return {
    sourceWater: field.asWritten(field.group({ water, waterAlkalinity, waterTemperature, hardness, calciumShare, measuredConductivity, pH: pHOfWater })),
    acidTreatment: field.optional(field.asWritten(field.group({ acid, purity, productDensity, targetPH, targetAlkalinity, exposure }))),
    barrel: field.asWritten(field.group({ volume, pH: pHOfFeed, ...barrelFields() })),
    injector: field.optional(field.asWritten(field.group({ dilution, stockVolume, tanksAvailable, tankTemperature }))),
    ...handedOn(weighing),
  };
}

/** What there is to know of the feed: the acid, what to weigh in, what comes of it, what the meter should show, what may settle out, the stock tanks. */
export function feedOutputs() {
  const { portions, totalMass, cost, misfits, unavailable, exceededByWater, conflicts, alkalinity, nutrientIntervals, conductivityInterval } = weighOut.outputs;
  const { conductivity, conductivityAtReference, conductivityUncertainty } = solutionConductivity.outputs;
  const { mass, productVolume, pH, pHInAir, alkalinityLeft, nutrientsAdded } = acidDose.outputs;
  return output.group({
    acidTreatment: output.optional(output.group(output.passedOn({ mass, productVolume, pH, pHInAir, alkalinityLeft, nutrientsAdded }))),
    ...output.passedOn({ portions, totalMass, cost, misfits, unavailable, exceededByWater, conflicts, alkalinity, nutrientIntervals, conductivityInterval }),
    meter: output.optional(output.group(output.passedOn({ conductivity, conductivityAtReference, conductivityUncertainty }))),
    ...output.passedOn({ saturationIndices: output.optional(saturation.outputs.saturationIndices), tanks: output.optional(stockTanks.outputs.tanks) }),
  });
}

type Described = WrittenFields<ReturnType<typeof feedFields>>;
type Water = Pick<Described['sourceWater'], 'water' | 'waterAlkalinity'>;

/** The feed from the water up; without what was asked of acid there is none: its analysis, acid, the feed sheet, the reading to confirm it with, what may settle out of it, and its stocks. */
export function assessFeed({ sourceWater, acidTreatment, barrel, injector, ...weighing }: Described, { run }: Assessor) {
  const { water, waterAlkalinity, waterTemperature = usualWaterTemperature, ...more } = sourceWater;
  const isKnown = [water, waterAlkalinity, more.hardness].some((one) => one !== undefined);
  const analysis = isKnown ? run(waterAnalysis, 'sourceWater', { water, waterAlkalinity, ...more }) : undefined;
  // Of a water that nothing is known of, acidDose says what it lacks; of one that is refused, waterAnalysis has said why.
  const treated = acidTreatment && (analysis ?? !isKnown) ? run(acidDose, 'acidTreatment', { volume: barrel.volume, nutrients: analysis?.nutrients, pH: more.pH, waterTemperature, ...acidTreatment }) : undefined;
  if (acidTreatment && !treated) return undefined;
  const used: Water = treated ? { water: together(analysis?.nutrients, treated.nutrientsAdded), waterAlkalinity: treated.alkalinityLeft } : analysis ? { water: analysis.nutrients } : { water, waterAlkalinity };

  const sheet = run(weighOut, '', { volume: barrel.volume, ...weighing, ...used });
  if (!sheet) return undefined;
  const { ions, portions } = sheet;
  const canSettle = ions['Ca2+'] && (ions['H2PO4-'] ?? ions['SO4 2-'] ?? ions['HCO3-']);
  const pH = barrel.pH ?? 6;
  const recipe = weighing.salts.map(({ mostMass: _most, division: _division, pricePerKilogram: _price, ...product }, i) => ({ ...product, mass: portions[i]!.mass })).filter(({ mass }) => mass.si > 0);
  const meter = run(solutionConductivity, 'barrel', { ions, waterTemperature });
  const stocks = injector && run(stockTanks, 'injector', { volume: barrel.volume, portions: recipe, pH, waterTemperature, ...injector, ...used });
  // Of the diluted feed the stocks tell already.
  const saturationIndices = stocks?.saturationIndices ?? (canSettle && run(saturation, 'barrel', { ions, pH, waterTemperature })?.saturationIndices);
  return { ...sheet, acidTreatment: treated, meter, saturationIndices, tanks: stocks?.tanks };
}

type Masses = { readonly [F in NutrientFormKey]?: Quantity<'massConcentration'> };

/** What a water has, without its bicarbonate, and what acid has added to it. */
function together(water: Masses = {}, added: Masses): Masses {
  const { HCO3: _alkalinity, ...sum } = water as { [F in NutrientFormKey]?: Quantity<'massConcentration'> };
  const unit = unitOf(massConcentration, 'mg/L');
  for (const [name, { si }] of Object.entries(added)) {
    const form = name as keyof typeof sum | 'N';
    if (form !== 'N') sum[form] = quantityFromSI(massConcentration, (sum[form]?.si ?? 0) + si, unit);
  }
  return sum;
}
