import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { amountsSeen, checkComposition, compositionFields } from '../solution/composition-field.js';
import { conductivity, volume } from '../units/dimensions.js';
import { amountsBetween, conductivityOfIons, shareForConductivity, waterForConductivityProportional } from './formulas/mixing.js';
import { refuseTooStrong } from './strength-seen.js';
import { conductivityConvergence, conductivityText, refuseOutside, targetField, targetTemperature } from './target-conductivity.js';

/** A feed thinned further than this is water. */
const leastShare = 0.001;

/**
 * How much water to add to a feed that is too strong, to bring it to a wanted conductivity.
 *
 * In: the `volume` of the feed, its `ions` or `nutrients`; the `sourceWater` to add (pure where not given); the `targetConductivity` at 25 °C
 * (0.01 to 50 mS/cm).
 * Out: the `freshWaterVolume` to add and the `finalVolume`; the `conductivity` at 25 °C before and the `waterReading` of the water;
 * the `proportionalVolume` that the quick rule would add, as if conductivity were shared out with the ions, and the `proportionalConductivity` that
 * this would leave: too much, since a thinner feed conducts more per ion. Volumes are taken to add up.
 * An InputError where not exactly one composition is given, or the target is not between water and feed.
 *
 * Source: McCleskey, Nordstrom, Ryan and Ball 2012, inverted.
 * @example
 * const barrel = diluteToConductivity({ volume: '6 L', ions: { 'K+': '10 mmol/L', 'Ca2+': '5 mmol/L', 'NO3-': '20 mmol/L' }, targetConductivity: '1.2 mS/cm' });
 * barrel.freshWaterVolume.in('L') // => 7
 * barrel.proportionalVolume.in('L') // => 6
 */
export const diluteToConductivity = /* @__PURE__ */ calculation({
  id: 'diluteToConductivity',
  title: 'Water to add for a wanted conductivity',
  inputs: () => ({
    volume: field.quantity(volume, { limits: ['10 mL', '1000 m³'] }),
    ...compositionFields(),
    sourceWater: field.optional(field.group(compositionFields(), checkComposition)),
    targetConductivity: targetField(),
  }),
  outputs: () => ({
    freshWaterVolume: output.quantity(volume, 'L'),
    finalVolume: output.quantity(volume, 'L'),
    conductivity: output.quantity(conductivity, 'mS/cm'),
    waterReading: output.quantity(conductivity, 'mS/cm'),
    proportionalVolume: output.quantity(volume, 'L'),
    proportionalConductivity: output.quantity(conductivity, 'mS/cm'),
    convergence: conductivityConvergence(),
  }),
  equation: 'κ((V c + V(water) c(water))/(V + V(water))) = κ(target)',
  sources: ['mccleskey-2012', 'parkhurst-appelo-2013', 'common-practice'],
  example: {
    volume: '60 L',
    nutrients: { 'N-NO3': '190 mg/L', P: '45 mg/L', K: '290 mg/L', Ca: '170 mg/L', Mg: '42 mg/L', S: '70 mg/L', Na: '20 mg/L', Cl: '30 mg/L' },
    sourceWater: { nutrients: { Ca: '52 mg/L', Mg: '7 mg/L', Na: '14 mg/L', Cl: '22 mg/L', S: '9 mg/L', HCO3: '140 mg/L' } },
    targetConductivity: '1.6 mS/cm',
  },
  check: checkComposition,
  solve: ({ volume, sourceWater, targetConductivity, ...feedSeen }, solving) => {
    const feed = amountsSeen(feedSeen);
    const water = sourceWater ? amountsSeen(sourceWater) : {};
    const place = feedSeen.ions ? 'ions' : 'nutrients';
    refuseTooStrong(feed, place, solving);
    refuseTooStrong(water, 'sourceWater', solving);
    const before = conductivityOfIons(feed, targetTemperature);
    const waterReading = conductivityOfIons(water, targetTemperature);
    if (!(before > waterReading)) solving.refuse(place, `a feed that conducts more than the water, ${conductivityText(waterReading)}`, conductivityText(before));
    refuseOutside(targetConductivity, waterReading, before, targetConductivity > before ? 'water only thins: weigh in more' : 'water brings a feed no lower than itself', solving);
    const { value: feedShare, residual, steps } = shareForConductivity(water, feed, targetConductivity, targetTemperature);
    if (feedShare < leastShare) solving.refuse('targetConductivity', `clearly more than the water alone reads, ${conductivityText(waterReading)}`, conductivityText(targetConductivity));
    const proportionalVolume = waterForConductivityProportional(volume, before, targetConductivity, waterReading);
    return {
      freshWaterVolume: volume * (1 / feedShare - 1),
      finalVolume: volume / feedShare,
      conductivity: before,
      waterReading,
      proportionalVolume,
      proportionalConductivity: conductivityOfIons(amountsBetween(water, feed, volume / (volume + proportionalVolume)), targetTemperature),
      convergence: { conductivityResidual: residual, steps },
    };
  },
});
