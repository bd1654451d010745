import { calculation } from '../calculation/calculation.js';
import { discharge } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { radiationSumField } from '../light/site-fields.js';
import { roundedDown, roundedUp } from '../numerics/round-outward.js';
import { conductivity, share, volume } from '../units/dimensions.js';
import { litres, percent } from '../units/in-words.js';
import { writeNumber } from '../units/write.js';
import { appliedVolumeForDrain, drainShareFromVolumes, uptakeFromApplied } from './formulas/drain.js';
import { uptakeConductivityFromDrain } from './formulas/leaching.js';
import { isAbove } from './is-above.js';
import { towardsUsualDrain } from './usual-drain.js';

/** Drain that is stronger than the feed by more than this tells of salt building up, S/m. Common practice, no source. */
const muchRise = 0.15;

/**
 * What a jug at a dripper and a tray under the bag tell of a day: the share that drained, and what the plants took.
 *
 * Takes the volume given and the drain caught, both of the same plants and the same day (given 1 mL to 100 m³), and perhaps the conductivity of
 * both, the share that should drain, and the radiation sum of the day outside (up to 45 MJ/m²), by which the drain is judged. Gives the share
 * that drained and the volume taken up; with conductivities how many times as strong as the feed the drain is, the share of the salts that stayed and the
 * conductivity of what was taken up, which `substrateLeaching` asks for (both absent where more salt drained than was given); with a share that should
 * drain the volume to give for the same uptake. What the substrate took or gave back counts as taken up: compare a day that begins and ends alike.
 * @throws InputError for input outside these limits, for as much drain as was given or more, and where only one conductivity is given.
 * @example
 * const day = drainCheck({ appliedVolume: '1.5 L', drainCaught: '0.3 L', feedConductivity: '1.8 mS/cm', drainConductivity: '2.6 mS/cm' });
 * day.drainShare.in('%') // => 20
 * day.uptakeConductivity?.in('mS/cm') // => 1.6
 */
export const drainCheck = /* @__PURE__ */ calculation({
  id: 'drainCheck',
  title: 'What the drain of a day tells',
  inputs: () => ({
    appliedVolume: field.quantity(volume, { limits: ['1 mL', '100 m³'] }),
    drainCaught: field.quantity(volume, { limits: ['0 L', '100 m³'] }),
    feedConductivity: field.optional(field.quantity(conductivity, { limits: ['0.05 mS/cm', '20 mS/cm'] })),
    drainConductivity: field.optional(field.quantity(conductivity, { limits: ['0.05 mS/cm', '40 mS/cm'] })),
    drainShare: field.optional(field.share({ limits: [0, 0.9] })),
    radiationSum: field.optional(radiationSumField()),
  }),
  outputs: () => ({
    drainShare: output.quantity(share, '%'),
    uptakeVolume: output.quantity(volume, 'L'),
    drainOverFeed: output.optional(output.number()),
    saltTakenShare: output.optional(output.quantity(share, '%')),
    uptakeConductivity: output.optional(output.quantity(conductivity, 'mS/cm')),
    wantedVolume: output.optional(output.quantity(volume, 'L')),
  }),
  equation: 'd = V_drain / V; T = V − V_drain; EC_up = (EC_feed − d EC_drain) / (1 − d)',
  sources: ['definition', 'common-practice'],
  cautions: [discharge],
  example: { appliedVolume: '1.5 L', drainCaught: '0.3 L', feedConductivity: '1.8 mS/cm', drainConductivity: '2.6 mS/cm', drainShare: '25 %', radiationSum: '1400 J/cm²' },
  check: ({ appliedVolume, drainCaught, feedConductivity, drainConductivity }, problem) => {
    if (drainCaught >= appliedVolume) problem(['drainCaught'], 'less drain than was given', 'as much or more', 'were both measured at the same plants, and did no rain or leak come in?');
    if ((feedConductivity === undefined) !== (drainConductivity === undefined)) problem([feedConductivity === undefined ? 'feedConductivity' : 'drainConductivity'], 'both conductivities, or none', 'one of them');
  },
  solve: ({ appliedVolume, drainCaught, feedConductivity, drainConductivity, drainShare: wanted, radiationSum }, { note }) => {
    const drainShare = drainShareFromVolumes(appliedVolume, drainCaught);
    const uptakeVolume = uptakeFromApplied(appliedVolume, drainShare);
    const unusual = radiationSum === undefined ? undefined : towardsUsualDrain(drainShare, uptakeVolume, radiationSum);
    if (unusual) note('info', 'unusual-drain', 'drainShare', `${percent(unusual.usual.lowest)} to ${percent(unusual.usual.highest)} drain is usual in such light: ${litres((drainShare > unusual.towards ? roundedDown : roundedUp)(unusual.wanted, 3))} instead of ${litres(appliedVolume)} would give ${percent(unusual.towards)}.`);
    const measured = { drainShare, uptakeVolume, wantedVolume: wanted === undefined ? undefined : appliedVolumeForDrain(uptakeVolume, wanted) };
    if (feedConductivity === undefined || drainConductivity === undefined) return { ...measured, drainOverFeed: undefined, saltTakenShare: undefined, uptakeConductivity: undefined };

    const rise = drainConductivity - feedConductivity;
    const uptakeConductivity = uptakeConductivityFromDrain(feedConductivity, drainConductivity, drainShare);
    if (isAbove(rise, muchRise)) note('caution', 'salt-builds-up', 'drainConductivity', `The drain is ${writeNumber(rise * 10)} mS/cm above the feed, more than ${writeNumber(muchRise * 10)}: salt builds up. Give more at a time so that more drains, or a weaker feed.`);
    if (uptakeConductivity < 0) note('info', 'salt-washed-out', 'drainConductivity', 'More salt drained than was given: the substrate is being washed out, so nothing can be said of what the plants took up of it.');
    if (rise < 0) note('info', 'weak-drain', 'drainConductivity', 'The drain is weaker than the feed: the plants take up salt faster than water, and want a stronger feed rather than more drain.');
    return {
      ...measured,
      drainOverFeed: drainConductivity / feedConductivity,
      saltTakenShare: uptakeConductivity < 0 ? undefined : 1 - (drainShare * drainConductivity) / feedConductivity,
      uptakeConductivity: uptakeConductivity < 0 ? undefined : uptakeConductivity,
    };
  },
});
