import type { SeenFields } from '../calculation/field-types.js';
import * as field from '../calculation/field.js';
import { handedOn } from '../calculation/handed-on.js';
import * as output from '../calculation/output.js';
import { pressure, share, temperature } from '../units/dimensions.js';
import { kilopascals as inKilopascals } from '../units/in-words.js';
import type { Quantity, QuantityInput } from '../units/quantity.js';
import { airRecord } from '../vapour/index.js';
import type { Assessor } from './attempt.js';
import { finding, type Basis } from './finding.js';
import { kilopascals } from './measures.js';

/** What the logger of a house tells, and between which deficits its air is let be. */
export function loggerFields() {
  const { coverHeatTransfer: _transfer, insideFilmCoefficient: _film, deficitBands: _bands, ...record } = airRecord.inputs;
  const band = field.quantity(pressure, { limits: ['0 kPa', '10 kPa'] });
  return { ...handedOn(record), tooWetBelow: field.withDefault(band, '0.2 kPa'), tooDryAbove: field.withDefault(band, '1 kPa') };
}

/** What the record of the logger says about the air. */
export function airOutputs() {
  const { meanDeficit, dayDeficit, nightDeficit, meanAirTemperature, coveredTime, leafWetTime, coverWetTime, degreeDays, meanDailyLight } = airRecord.outputs;
  return output.optional(output.group({
    ...output.passedOn({ meanDeficit, dayDeficit, nightDeficit, meanAirTemperature, coveredTime, leafWetTime, coverWetTime, degreeDays, meanDailyLight }),
    lowestDeficit: output.quantity(pressure, 'kPa'),
    highestDeficit: output.quantity(pressure, 'kPa'),
    highestAirTemperature: output.quantity(temperature, '°C'),
    lowestAirTemperature: output.quantity(temperature, '°C'),
    tooWetShare: output.quantity(share, '%'),
    tooDryShare: output.quantity(share, '%'),
  }));
}

/** What the band that air is judged against rests on. */
const band: Basis = { id: 'assessGreenhouse', sources: ['grange-hand-1987'] };

type SeenLogger = SeenFields<ReturnType<typeof loggerFields>>;

/** The cover that the night cools: its heat transfer, and the film on its inner side where that is told. */
interface Cover {
  readonly coverHeatTransfer: Quantity<'heatTransfer'>;
  readonly insideFilmCoefficient: QuantityInput<'heatTransfer'> | undefined;
}

/** How dry and how wet the air of a record is, for how long, and what gets wet of it. */
export function assessAir({ tooWetBelow, tooDryAbove, ...record }: SeenLogger, cover: Cover | undefined, { run, add }: Assessor) {
  const edges = [kilopascals(tooWetBelow), kilopascals(tooDryAbove)];
  // The weather tells of the cover only where that is known.
  const seen = run(airRecord, 'logger', { ...record, ...(cover ?? { outsideTemperature: undefined }), deficitBands: edges });
  if (!seen) return undefined;
  const [tooWetShare, , tooDryShare] = seen.bands!.map(({ bandShare }) => bandShare.si) as [number, number, number];
  const percent = (fraction: number): string => `${Math.max(1, Math.round(fraction * 100))} %`;
  if (tooWetShare > 0) add(finding(band, 'logger', 'caution', 'air-too-wet', `The air is below ${inKilopascals(tooWetBelow)} for ${percent(tooWetShare)} of the time: leaves hardly transpire and may get wet. Vent, or warm the air a little, before the cool hours.`));
  if (tooDryShare > 0) add(finding(band, 'logger', 'caution', 'air-too-dry', `The air is above ${inKilopascals(tooDryAbove)} for ${percent(tooDryShare)} of the time: plants lose water faster than roots bring it. Shade, damp the floor, or vent less.`));
  const { vapourPressureDeficit: { si: deficits }, wholeDays } = seen;
  return {
    ...seen,
    lowestDeficit: least(deficits),
    highestDeficit: -least(deficits.map((one) => -one)),
    lowestAirTemperature: least(wholeDays.lowestAirTemperature.si),
    highestAirTemperature: -least(wholeDays.highestAirTemperature.si.map((one) => -one)),
    tooWetShare, tooDryShare,
  };
}

/** The least of the numbers that are there. */
const least = (numbers: Float64Array): number => numbers.reduce((lowest, one) => (one < lowest ? one : lowest), Infinity);
