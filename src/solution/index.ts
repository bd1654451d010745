export { blend } from './blend.js';
export { chargeBalance } from './charge-balance.js';
export { convertConcentration } from './convert-concentration.js';
export { oxideToElement } from './oxide-to-element.js';
export { saturation } from './saturation.js';
export { atomicWeights, type Element } from './atomic-weights.js';
export { aqueousComponents, aqueousSpecies, type AqueousSpecies, type Component, type Formation } from './aqueous-species.js';
export { ions, type Composition, type DissolvedParticle, type Ion } from './ions.js';
export { nutrientForms, type NutrientForm, type NutrientFormKey } from './nutrient-forms.js';
export { oxides, type Oxide } from './oxides.js';
export { solids, type Solid, type SolidKey } from './solids.js';
export { waterItem, waterItemKeys, waterItems, type WaterItemKey } from './water-items.js';
export { logActivityCoefficientDavies1962 } from './formulas/activity.js';
export { blendAmounts, blendTemperature, nutrientFormOfIon, nutrientMassesOfIons, type BlendPart } from './formulas/blending.js';
export {
  elementFractionOfOxide, massFractionOfElement, molarMassOfComposition, molarMassOfIon, molarMassOfNutrientForm,
} from './formulas/composition.js';
export {
  alkalinityFromBicarbonate, alkalinityFromCalciumCarbonate, amountFromIonMass, amountFromNutrientMass, bicarbonateFromAlkalinity,
  calciumCarbonateFromAlkalinity, chargeBalanceOfIons, chargeFromIonAmount, chargesOfIons, ionAmountFromCharge, ionAmountsOfNutrients,
  ionicStrengthOfIons, ionMassFromAmount, nitrogenOfForms, nutrientMassFromAmount, type ChargeBalance, type IonAmounts, type NutrientMasses,
} from './formulas/concentration.js';
export {
  carbonicAcidPk1Millero2006, carbonicAcidPk2Millero2006, logConstantAnalytic, logConstantOf, logConstantVantHoff, logHenryConstantPlummerBusenberg1982,
  type AnalyticCoefficients, type TabledConstant,
} from './formulas/equilibrium.js';
export { logFormationConstant } from './formulas/formation.js';
export { logSolubilityConstant, saturationIndices, type SaturationIndices } from './formulas/saturation.js';
export { speciate, type ComponentTotals, type Speciation, type SpeciationConditions } from './formulas/speciation.js';
export { speciationTask, speciationTaskFromCharge, type SpeciationTask } from './formulas/stated-solution.js';
export { alkalinityFromCharge, alkalinityOfIons, chargeLeftOut, componentTotalsOf } from './formulas/totals.js';
