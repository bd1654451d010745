/** How moist the air of a day was, in whichever way it is known, as FAO-56 reckons it. */
import type { AddProblem } from '../calculation/problem.js';
import * as field from '../calculation/field.js';
import type { SeenFields } from '../calculation/field-types.js';
import type { AddNote } from '../calculation/note.js';
import { absolutePressure, temperature } from '../units/dimensions.js';
import { vapourPressureOfDayFao56 } from '../water/air-fao56.js';

/** Temperature of the air. */
export const airTemperatureField = () => field.quantity(temperature, { limits: ['-40 °C', '60 °C'] });

/** Relative humidity. Sensors in moist air show up to 102 %. */
export const relativeHumidityField = () => field.share({ limits: [0, 1.02], valid: [0, 1] });

/** Highest and lowest temperature, and what may be known of the humidity. */
export const airOfDayFields = () => ({
  highestAirTemperature: airTemperatureField(),
  lowestAirTemperature: airTemperatureField(),
  highestRelativeHumidity: field.optional(relativeHumidityField()),
  lowestRelativeHumidity: field.optional(relativeHumidityField()),
  meanRelativeHumidity: field.optional(relativeHumidityField()),
  dewPoint: field.optional(airTemperatureField()),
  vapourPressure: field.optional(field.quantity(absolutePressure, { limits: ['0 kPa', '20 kPa'] })),
});

type AirOfDay = SeenFields<ReturnType<typeof airOfDayFields>>;

/** Problems between the temperatures and humidities of a day. */
export function refuseOddAir(
  { highestAirTemperature, lowestAirTemperature, highestRelativeHumidity, lowestRelativeHumidity, meanRelativeHumidity, dewPoint, vapourPressure }: AirOfDay,
  problem: AddProblem,
): void {
  if (lowestAirTemperature > highestAirTemperature) problem(['lowestAirTemperature'], 'at most the highest', 'one above it', 'are the two swapped?');
  if (lowestRelativeHumidity !== undefined && highestRelativeHumidity === undefined && meanRelativeHumidity === undefined) problem(['highestRelativeHumidity'], 'a share, to go with the lowest', 'nothing');
  if (lowestRelativeHumidity! > highestRelativeHumidity!) problem(['lowestRelativeHumidity'], 'at most the highest', 'one above it', 'are the two swapped?');
  const relative = highestRelativeHumidity ?? meanRelativeHumidity;
  const ways = Object.entries({ dewPoint, vapourPressure, 'relative humidity': relative }).filter(([, given]) => given !== undefined).map(([name]) => name);
  if (ways.length > 1) problem([dewPoint === undefined ? 'vapourPressure' : 'dewPoint'], 'one way to state the humidity: dewPoint, vapourPressure or relative humidities', ways.join(' and '));
}

/** Mean vapour pressure of the day in Pa, by the best that is known; a note says by which equation of FAO-56. */
export function vapourPressureOfDay({ vapourPressure, ...known }: AirOfDay, note: AddNote): number {
  if (vapourPressure !== undefined) return vapourPressure;
  const { lowestRelativeHumidity: lowest, meanRelativeHumidity: mean, highestRelativeHumidity: highest } = known;
  if (lowest! > mean! || mean! > highest!) note('caution', 'humidities-out-of-order', 'meanRelativeHumidity', 'The mean humidity does not lie between the lowest and the highest: one of them is not of this day.');
  const { equation, pressure } = vapourPressureOfDayFao56(known);
  if (equation === 48) note('caution', 'no-humidity', 'vapourPressure', 'No humidity is given: the air is taken as saturated at the lowest temperature, which is too moist for dry places and for a heated house.');
  note('info', 'vapour-pressure-equation', 'vapourPressure', `Vapour pressure by equation ${equation} of FAO-56.`);
  return pressure;
}
