import type { Solving } from '../calculation/calculation.js';
import * as output from '../calculation/output.js';
import { conductivityModelUncertainty } from '../conductivity/formulas/ionic-model.js';
import { conductivity, massConcentration } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { byForm, inOrder } from './feed.js';
import type { FeedUncertainty } from './formulas/feed-uncertainty.js';
import type { UncertainValue } from './formulas/uncertain-value.js';
import type { UncertaintySource } from './formulas/weighing-uncertainty.js';

/** An interval that reaches further than this share of the value has to be told. Common practice, no source. */
const telling = 0.1;

const mainSource = () => output.optional(output.choice(['scale', 'purity', 'label', 'volume']));

/** What a calculation tells of how well a feed is known. */
export const feedIntervalOutputs = () => ({
  nutrientIntervals: byForm(output.group({
    massConcentration: output.quantity(massConcentration, 'mg/L'),
    standardUncertainty: output.quantity(massConcentration, 'mg/L'),
    lowConcentration: output.quantity(massConcentration, 'mg/L'),
    highConcentration: output.quantity(massConcentration, 'mg/L'),
    leastConcentration: output.quantity(massConcentration, 'mg/L'),
    mostConcentration: output.quantity(massConcentration, 'mg/L'),
    mainSource: mainSource(),
  })),
  conductivityInterval: output.optional(output.group({
    conductivityAtReference: output.quantity(conductivity, 'mS/cm'),
    conductivityStandardUncertainty: output.quantity(conductivity, 'mS/cm'),
    lowConductivity: output.quantity(conductivity, 'mS/cm'),
    highConductivity: output.quantity(conductivity, 'mS/cm'),
    leastConductivity: output.quantity(conductivity, 'mS/cm'),
    mostConductivity: output.quantity(conductivity, 'mS/cm'),
    mainSource: mainSource(),
    conductivityUncertainty: output.quantity(conductivity, 'mS/cm'),
  })),
});

type Given = output.GivenOutputs<ReturnType<typeof feedIntervalOutputs>>;
type Interval = NonNullable<Given['nutrientIntervals']['K']>;

/** How well a feed is known, in the shape of these outputs. */
export function tellFeedInterval({ nutrients, conductivity: known }: FeedUncertainty): Given {
  const intervals = Object.entries(nutrients).map(([form, one]): [string, Interval] => [form, {
    massConcentration: one.value, standardUncertainty: one.standardUncertainty,
    lowConcentration: one.low, highConcentration: one.high, leastConcentration: one.least, mostConcentration: one.most, mainSource: one.mainSource,
  }]);
  return {
    nutrientIntervals: inOrder(Object.fromEntries(intervals)),
    conductivityInterval: known && {
      conductivityAtReference: known.value, conductivityStandardUncertainty: known.standardUncertainty,
      lowConductivity: known.low, highConductivity: known.high, leastConductivity: known.least, mostConductivity: known.most, mainSource: known.mainSource,
      conductivityUncertainty: conductivityModelUncertainty * known.value,
    },
  };
}

/** What helps against each source of uncertainty. */
const remedies: Readonly<Record<UncertaintySource, string>> = {
  scale: 'weigh a larger amount on it, dissolve that and measure out a part',
  purity: 'look for a product with a narrower specification, or for the analysis of this lot',
  label: 'look for a product with an analysis of the lot',
  volume: 'find the volume of the barrel by weighing or metering the water into it',
};

/** Names the nutrients that may be off by more than a tenth, and what most of it comes from. */
export function noteIntervals({ nutrients, conductivity: known }: FeedUncertainty, { note }: Solving): void {
  const isWide = ({ value, low, high }: UncertainValue): boolean => Math.max(high - value, value - low) > telling * value;
  for (const [form, one] of Object.entries(inOrder(nutrients))) {
    if (one.mainSource === undefined || !isWide(one)) continue;
    note('caution', 'wide-interval', `nutrientIntervals.${form}`, `${form} may be anywhere from ${writeNumber(one.low * 1000)} to ${writeNumber(one.high * 1000)} mg/L, most of it from the ${one.mainSource}: ${remedies[one.mainSource]}.`);
  }
  if (known === undefined) note('caution', 'too-strong-for-conductivity', 'conductivityInterval', 'More than 1 mol/L of ionic strength: no conductivity can be worked out for it. For a stock, take the feed that it makes.');
}
