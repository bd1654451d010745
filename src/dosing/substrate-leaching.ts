import { calculation, type Solving } from '../calculation/calculation.js';
import { discharge } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { conductivity, share } from '../units/dimensions.js';
import { percent } from '../units/in-words.js';
import { drainConductivityFromLeaching, leachingFractionFromConductivity } from './formulas/leaching.js';
import { isAbove } from './is-above.js';

/** Drain above this share is beyond what is usual even in strong sun. Common practice, no source. */
const mostUsual = 0.4;

/** What both directions take in. */
const feedFields = () => ({
  feedConductivity: field.quantity(conductivity, { limits: ['0.05 mS/cm', '20 mS/cm'] }),
  uptakeConductivity: field.optional(field.quantity(conductivity, { limits: ['0 mS/cm', '20 mS/cm'] })),
});

const noteNoUptake = (note: Solving['note']): void => note('caution', 'no-uptake', 'uptakeConductivity', 'Worked out as if plants took up pure water. Where they are fed they take up salt too, and far less has to drain: give uptakeConductivity, which drainCheck finds from what is given and what drains.');

/**
 * How much has to drain from a fertilised substrate so that the drain is no stronger than wanted.
 *
 * Takes the conductivity of what is given and of the drain that is wanted (0.05 to 40 mS/cm), and that of the salts in the water that the plants take up:
 * of a fed crop 60 to 90 % of the feed, by what `drainCheck` finds. Without it the plants are taken to leave all salt behind. Gives the share that
 * has to drain, and the share that would have to if they did. At steady state, from the balance of salt.
 * @throws InputError for input outside these limits, a drain that is not stronger than the feed, and an uptake that is not weaker.
 * @example
 * substrateLeaching({ feedConductivity: '3.0 mS/cm', drainConductivity: '4.5 mS/cm', uptakeConductivity: '2.4 mS/cm' }).drainShare.in('%') // => 28.5714
 */
export const substrateLeaching = /* @__PURE__ */ calculation({
  id: 'substrateLeaching',
  title: 'Drain that holds the salt in a substrate',
  inputs: () => ({ ...feedFields(), drainConductivity: field.quantity(conductivity, { limits: ['0.05 mS/cm', '40 mS/cm'] }) }),
  outputs: () => ({ drainShare: output.quantity(share, '%'), drainShareWithoutUptake: output.quantity(share, '%') }),
  equation: 'LF = (EC_feed − EC_up) / (EC_drain − EC_up)',
  sources: ['definition'],
  cautions: [discharge],
  example: { feedConductivity: '1.8 mS/cm', drainConductivity: '2.6 mS/cm', uptakeConductivity: '1.5 mS/cm' },
  check: ({ feedConductivity, drainConductivity, uptakeConductivity = 0 }, problem) => {
    if (drainConductivity <= feedConductivity) problem(['drainConductivity'], 'a drain that is stronger than what is given', 'one that is not', 'a weaker drain tells of plants that take up salt faster than water: they want a stronger feed, not more drain');
    if (uptakeConductivity >= feedConductivity) problem(['uptakeConductivity'], 'an uptake that is weaker than what is given', 'one that is not', 'plants that take up all the salt leave none behind: no drain is needed for it');
  },
  solve: ({ feedConductivity, drainConductivity, uptakeConductivity }, { note }) => {
    const drainShare = leachingFractionFromConductivity(feedConductivity, drainConductivity, uptakeConductivity);
    if (uptakeConductivity === undefined) noteNoUptake(note);
    if (isAbove(drainShare, mostUsual)) note('caution', 'much-drain', 'drainShare', `${percent(drainShare)} drain is more than the ${percent(mostUsual)} that is usual at most: a weaker feed, or water with less salt, needs less.`);
    return { drainShare, drainShareWithoutUptake: leachingFractionFromConductivity(feedConductivity, drainConductivity) };
  },
});

/**
 * How strong the drain of a substrate becomes where a share of what is given drains. The way back from `substrateLeaching`.
 *
 * Takes the conductivity of what is given, the share that drains (1 to 99 %) and the conductivity of the salts in the water that the plants take up; without it
 * they are taken to leave all salt behind. Gives the conductivity of the drain, and how many times that of the feed it is. At steady state.
 * @throws InputError for input outside these limits, and for plants that would take up more salt than they are given.
 * @example
 * drainStrength({ feedConductivity: '2.0 mS/cm', drainShare: '25 %', uptakeConductivity: '1.6 mS/cm' }).drainConductivity.in('mS/cm') // => 3.2
 */
export const drainStrength = /* @__PURE__ */ calculation({
  id: 'drainStrength',
  title: 'How strong the drain becomes',
  inputs: () => ({ ...feedFields(), drainShare: field.share({ limits: [0.01, 0.99] }) }),
  outputs: () => ({ drainConductivity: output.quantity(conductivity, 'mS/cm'), drainOverFeed: output.number() }),
  equation: 'EC_drain = (EC_feed − (1 − LF) EC_up) / LF',
  sources: ['definition'],
  cautions: [discharge],
  example: { feedConductivity: '1.8 mS/cm', drainShare: '25 %', uptakeConductivity: '1.5 mS/cm' },
  solve: ({ feedConductivity, drainShare, uptakeConductivity }, { note, refuse }) => {
    const drainConductivity = drainConductivityFromLeaching(feedConductivity, drainShare, uptakeConductivity);
    if (drainConductivity < 0) refuse('uptakeConductivity', `at most ${Math.floor((feedConductivity * 1e4) / (1 - drainShare)) / 1000} mS/cm`, 'more', 'plants cannot take up more salt than they are given');
    if (uptakeConductivity === undefined) noteNoUptake(note);
    return { drainConductivity, drainOverFeed: drainConductivity / feedConductivity };
  },
});
