import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { share, volume } from '../units/dimensions.js';
import { percent } from '../units/in-words.js';
import { isAbove } from './is-above.js';
import { noteShotShare } from './shot.js';
import { checkSubstrate, heldBy, noteSubstrate, substrateFields } from './substrate-fields.js';
import { substrateOf } from './substrates.js';

/** Air below this share is called critical. As a study of stone wool slabs has it. */
const criticalAir = 0.1;

/** Shares of the container water that are usually used up in a night: kept wet, and kept dry. Common practice, no source. */
const [wetNight, usualNight, dryNight] = [0.05, 0.1, 0.15];

/**
 * What the substrate to a plant holds, and what a shot or a night is of it.
 *
 * Takes the volume of substrate to a plant (10 mL to 1 m³) and what it is: one of the table (coir, stone wool, peat, perlite), or its own figures, which go before
 * those of the table: the water that it holds when drained, what of it is easily available (between -1 and -5 kPa), both as shares of the volume, and all its pores. Perhaps the
 * volume of one shot, and what is used between the last shot of a day and the first of the next (both up to 1 m³). Gives the water at container capacity and
 * the air beside it (absent where the water is more than the table has pores), the easily available water, the shot as a share of each, and the use of the night as a share of the container water.
 * @throws InputError for input outside these limits, a substrate of which nothing is known, and shares that do not fit into one another.
 * @example
 * const bag = substrateWater({ substrateVolume: '10 L', waterHoldingShare: '60 %', easilyAvailableShare: '25 %', shotVolume: '300 mL' });
 * bag.containerWater.in('L') // => 6
 * bag.shotOfEasilyAvailable?.in('%') // => 12
 */
export const substrateWater = /* @__PURE__ */ calculation({
  id: 'substrateWater',
  title: 'Water and air in the substrate of a plant',
  inputs: () => ({
    ...substrateFields(),
    poreShare: field.optional(field.share({ limits: [0.1, 0.99] })),
    shotVolume: field.optional(field.quantity(volume, { limits: ['0.1 mL', '1 m³'] })),
    nightUse: field.optional(field.quantity(volume, { limits: ['0 L', '1 m³'] })),
  }),
  outputs: () => ({
    containerWater: output.quantity(volume, 'L'),
    waterHoldingShare: output.quantity(share, '%'),
    easilyAvailableWater: output.optional(output.quantity(volume, 'L')),
    airVolume: output.optional(output.quantity(volume, 'L')),
    airShare: output.optional(output.quantity(share, '%')),
    shotShare: output.optional(output.quantity(share, '%')),
    shotOfContainerWater: output.optional(output.quantity(share, '%')),
    shotOfEasilyAvailable: output.optional(output.quantity(share, '%')),
    nightUseShare: output.optional(output.quantity(share, '%')),
  }),
  equation: 'water = θ V; air = (pores − θ) V; easily available = a V',
  sources: ['definition', 'vargas-tapia-2008', 'de-boodt-verdonck-1972', 'common-practice'],
  example: { substrateVolume: '10 L', substrate: 'coir', shotVolume: '300 mL', nightUse: '0.5 L' },
  check: (seen, problem) => {
    checkSubstrate(seen, problem);
    if (seen.poreShare !== undefined && (seen.substrate !== undefined || seen.waterHoldingShare !== undefined) && seen.poreShare < heldBy(seen).water) problem(['poreShare'], 'no less than the water that fills the pores', 'less');
  },
  solve: (seen, { note, refuse }) => {
    const { substrateVolume, substrate, poreShare, shotVolume, nightUse } = seen;
    const { water, easy } = heldBy(seen);
    const containerWater = water * substrateVolume;
    const easilyAvailableWater = easy === undefined ? undefined : easy * substrateVolume;
    if (nightUse !== undefined && nightUse > containerWater) refuse('nightUse', 'no more than the substrate holds', 'more');
    const tablePores = substrate && substrateOf(substrate).pores;
    const isBeyondTable = poreShare === undefined && tablePores !== undefined && water > tablePores;
    const pores = poreShare ?? (isBeyondTable ? undefined : tablePores);
    const airShare = pores === undefined ? undefined : pores - water;
    const nightUseShare = nightUse === undefined ? undefined : nightUse / containerWater;

    noteSubstrate(seen, note);
    if (isBeyondTable) note('caution', 'more-than-pores', 'waterHoldingShare', `${percent(water)} water is more than the ${percent(tablePores)} of pores that the table has for ${substrate}, so nothing can be said of its air: weigh it again, drained (substrateByWeight), or give poreShare.`);
    if (shotVolume !== undefined) noteShotShare(shotVolume / substrateVolume, 'shotVolume', note);
    if (airShare !== undefined && isAbove(criticalAir, airShare)) note('caution', 'little-air', 'airShare', `${percent(airShare)} air is below the ${percent(criticalAir)} that roots are said to need: a coarser or a higher substrate drains further.`);
    if (easilyAvailableWater !== undefined && shotVolume !== undefined && isAbove(shotVolume, easilyAvailableWater)) note('caution', 'shot-too-large', 'shotVolume', 'A shot larger than the easily available water mostly runs through: give smaller ones more often.');
    if (nightUseShare !== undefined && isAbove(nightUseShare, dryNight)) note('caution', 'dry-night', 'nightUse', `${percent(nightUseShare)} of the container water goes between the last shot and the first; ${percent(wetNight)} to ${percent(usualNight)} is usual, and ${percent(usualNight)} to ${percent(dryNight)} where roots are kept dry: stop later, or begin earlier.`);
    if (nightUseShare !== undefined && isAbove(wetNight, nightUseShare)) note('info', 'wet-night', 'nightUse', `${percent(nightUseShare)} of the container water goes between the last shot and the first, less than the usual ${percent(wetNight)} to ${percent(usualNight)}: roots stay wet; the last shot can be earlier.`);
    return {
      containerWater,
      waterHoldingShare: water,
      easilyAvailableWater,
      airVolume: airShare === undefined ? undefined : airShare * substrateVolume,
      airShare,
      shotShare: shotVolume === undefined ? undefined : shotVolume / substrateVolume,
      shotOfContainerWater: shotVolume === undefined ? undefined : shotVolume / containerWater,
      shotOfEasilyAvailable: shotVolume === undefined || easilyAvailableWater === undefined ? undefined : shotVolume / easilyAvailableWater,
      nightUseShare,
    };
  },
});
