import type { WrittenFields } from '../calculation/field-types.js';
import * as output from '../calculation/output.js';
import { pressure, share } from '../units/dimensions.js';
import { vapourPressureDeficitColumn } from '../vapour/index.js';
import type { Assessor } from './attempt.js';
import { finding, type Basis } from './finding.js';

/** What a sample of the logger says about the air. */
export const airOutputs = () =>
  output.group({
    meanDeficit: output.quantity(pressure, 'kPa'),
    lowestDeficit: output.quantity(pressure, 'kPa'),
    highestDeficit: output.quantity(pressure, 'kPa'),
    tooWetShare: output.quantity(share, '%'),
    tooDryShare: output.quantity(share, '%'),
    readings: output.number(),
  });

/** What the band that air is judged against rests on. */
const band: Basis = { id: 'assessGreenhouse', sources: ['grange-hand-1987'] };

/** Deficits between which the air is let be. */
export interface DeficitBand {
  readonly tooWetBelow: number;
  readonly tooDryAbove: number;
}

type Readings = Pick<WrittenFields<typeof vapourPressureDeficitColumn.inputs>, 'airTemperature' | 'relativeHumidity'>;

/** How dry and how wet the air of a sample is. Every reading counts the same, whatever the time between them. */
export function assessAir({ airTemperature, relativeHumidity }: Readings, { tooWetBelow, tooDryAbove }: DeficitBand, { run, add }: Assessor) {
  const result = run(vapourPressureDeficitColumn, 'logger', { airTemperature, relativeHumidity });
  if (!result) return undefined;
  const deficits = result.vapourPressureDeficit.si.filter((deficit) => !Number.isNaN(deficit));
  if (deficits.length === 0) {
    add(finding(vapourPressureDeficitColumn, 'logger', 'caution', 'no-readings', 'No row of the logger has both a temperature and a humidity.'));
    return undefined;
  }
  const part = (isSo: (deficit: number) => boolean): number => deficits.filter(isSo).length / deficits.length;
  const [tooWetShare, tooDryShare] = [part((deficit) => deficit < tooWetBelow), part((deficit) => deficit > tooDryAbove)];
  const percent = (fraction: number): string => `${Math.round(fraction * 100)} %`;
  const kilopascals = (pascals: number): string => `${pascals / 1000} kPa`;
  if (tooWetShare > 0) {
    add(finding(band, 'logger', 'caution', 'air-too-wet', `${percent(tooWetShare)} of the readings lie below ${kilopascals(tooWetBelow)}: leaves hardly transpire and may get wet. Vent, or warm the air a little, before the cool hours.`));
  }
  if (tooDryShare > 0) {
    add(finding(band, 'logger', 'caution', 'air-too-dry', `${percent(tooDryShare)} of the readings lie above ${kilopascals(tooDryAbove)}: plants lose water faster than roots bring it. Shade, damp the floor, or vent less.`));
  }
  return {
    meanDeficit: deficits.reduce((sum, deficit) => sum + deficit, 0) / deficits.length,
    lowestDeficit: deficits.reduce((lowest, deficit) => Math.min(lowest, deficit), Infinity),
    highestDeficit: deficits.reduce((highest, deficit) => Math.max(highest, deficit), -Infinity),
    tooWetShare,
    tooDryShare,
    readings: deficits.length,
  };
}
