import { calculation } from '../calculation/calculation.js';
import { mainsElectricity } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { bracketedRoot } from '../numerics/roots.js';
import { roundedUp } from '../numerics/round-outward.js';
import { area, heatTransfer, irradiance, power, temperature, temperatureDifference, thermalConductance, thermalConductivity, time } from '../units/dimensions.js';
import { hours } from '../units/in-words.js';
import { writeNumber } from '../units/write.js';
import { zeroCelsius } from '../water/constants.js';
import { airAround, airAroundFields, checkAir } from './air-around.js';
import { barrelShape, wallFields, wallOf } from './barrel-fields.js';
import { noteWarmBarrel } from './cautions.js';
import { barrelCourse, type Barrel, type BarrelCourse } from './formulas/barrel-run.js';
import { barrelTransfer } from './formulas/barrel-wall.js';
import { biotNumberBehindWall } from './formulas/films.js';
import { wallMaterials } from './wall-materials.js';
import { barrelTemperature, checkAmount, massOf, waterAmountFields } from './water-amount.js';

/** Most rows of a course. */
const mostRows = 3000;

/** The strongest heater, W. */
const mostHeat = 100_000;

/** The barrel is followed at least this often, s, so that frost between two rows is seen. */
const longestStep = 1800;

/**
 * How fast a barrel of feed takes on the temperature of the air, and when it is at the one wanted.
 *
 * Takes the water by mass (0.1 kg to 10 t) or by the barrel that it fills (0.1 L to 10 m³), its temperature at first (0 to 95 °C) and the one wanted;
 * the air (-40 to 60 °C) as one temperature, by its highest and lowest with the time of the highest (15 h by default), or as a logger's columns; for
 * these, the time of day of the start (8 h, or the first reading). The barrel stands upright under a lid: by its diameter (1.5 of them high unless given)
 * or the area that gives off heat; its wall (3 mm HDPE by default), lagging and its conductivity, the film of the water (300 W/(m² K); 200 to 350),
 * emissivity (0.9; bright metal 0.1 to 0.3) and wind on it (none by default: indoors). Or the heat transfer as a number: 8 W/(m² K) indoors, 12 to 20 in wind,
 * 0.7 behind 50 mm of foam are common practice. A heater in it (0 to 100 kW), and sun that falls on it through the time: the mean of it on the area
 * that the barrel shows to it (its diameter by its height unless given), what the cover lets through, and the share that the barrel takes up (0.5; black
 * 0.9, blue or green 0.3 to 0.5). Followed for 48 h (5 min to 30 d) in rows of 15 min unless given, 3000 rows at most.
 *
 * Gives temperature by time, that at the end, when the wanted one is reached (none where it is not), the time constant and the time for half of a difference, heat
 * transfer with its films, and whether one temperature describes the barrel (Biot number below 0.1). Water that comes to 0 °C stays there, as it freezes. Where it does not
 * come to the wanted temperature, a note has the heat that would do. Above 30 °C, wanted or reached, a note warns for the roots, above 50 °C of scalds.
 * The heat transfer follows the temperatures; means over the time are given. Where it is a number, the course is exact.
 * @throws InputError for input outside these limits, for air or water stated twice or not at all, for readings that do not last, for a barrel less than
 * 1 cm or more than 10 m deep, and for a heater or sun that would make the water boil. ConvergenceError where the steps of the course do not close.
 * @example
 * const spring = barrelWarmUp({ barrelVolume: '200 L', waterTemperature: '9 °C', wantedTemperature: '16 °C', highestAirTemperature: '24 °C', lowestAirTemperature: '12 °C' });
 * spring.timeConstant.in('h') // => 19.94
 * spring.timeToReach?.in('h') // => 28.93
 */
export const barrelWarmUp = /* @__PURE__ */ calculation({
  id: 'barrelWarmUp',
  title: 'Warming or cooling of a barrel through time',
  inputs: () => ({
    ...waterAmountFields(),
    waterTemperature: barrelTemperature(),
    wantedTemperature: field.optional(barrelTemperature()),
    ...airAroundFields(),
    ...wallFields(),
    heaterPower: field.withDefault(field.quantity(power, { limits: ['0 W', '100 kW'] }), '0 W'),
    globalRadiation: field.withDefault(field.quantity(irradiance, { limits: ['0 W/m²', '1400 W/m²'] }), '0 W/m²'),
    coverTransmission: field.withDefault(field.share(), 1),
    absorbedShare: field.withDefault(field.share(), 0.5),
    sunlitArea: field.optional(field.quantity(area, { limits: ['0 m²', '100 m²'] })),
    lookAhead: field.withDefault(field.quantity(time, { limits: ['5 min', '30 d'] }), '48 h'),
    stepLength: field.withDefault(field.quantity(time, { limits: ['1 min', '1 d'] }), '15 min'),
  }),
  outputs: () => ({
    endTemperature: output.quantity(temperature, '°C'),
    timeToReach: output.optional(output.quantity(time, 'h')),
    timeConstant: output.quantity(time, 'h'),
    halfwayTime: output.quantity(time, 'h'),
    times: output.column(time, 'h'),
    waterTemperatures: output.column(temperature, '°C'),
    barrelArea: output.quantity(area, 'm²'),
    barrelHeatTransfer: output.quantity(heatTransfer, 'W/(m²·K)'),
    barrelConductance: output.quantity(thermalConductance, 'W/K'),
    convectionFilm: output.optional(output.quantity(heatTransfer, 'W/(m²·K)')),
    radiationFilm: output.optional(output.quantity(heatTransfer, 'W/(m²·K)')),
    wallConductivity: output.optional(output.quantity(thermalConductivity, 'W/(m·K)')),
    biotNumber: output.optional(output.number()),
    solarGain: output.quantity(power, 'W'),
    convergence: output.group({ temperatureResidual: output.quantity(temperatureDifference, 'K'), steps: output.number() }),
  }),
  equation: 'm cp dT/dt = U A (Ta − T) + P + a τ I As; 1/U = 1/hi + Σ s/k + 1/(hc + hr); τ = m cp/(U A)',
  sources: ['churchill-chu-1975', 'churchill-bernstein-1977', 'en-12524', 'us-standard-atmosphere-1976', 'iapws-sr6-08', 'common-practice'],
  example: { barrelVolume: '200 L', waterTemperature: '9 °C', wantedTemperature: '16 °C', highestAirTemperature: '24 °C', lowestAirTemperature: '12 °C', startTime: '8 h' },
  check: (seen, problem) => {
    checkAmount(seen, problem);
    checkAir(seen, problem);
    if (seen.lookAhead / seen.stepLength > mostRows) problem(['stepLength'], `steps that make at most ${mostRows} rows`, `${Math.ceil(seen.lookAhead / seen.stepLength)} rows`, 'take longer steps');
    if (seen.waterMass === undefined && seen.barrelVolume === undefined) return;
    const { height } = barrelShape(massOf(seen, seen.waterTemperature), seen.waterTemperature, seen);
    if (height < 0.01 || height > 10) problem(['barrelDiameter'], 'one that makes the water 1 cm to 10 m deep', `${writeNumber(height)} m`);
  },
  solve: (seen, solving) => {
    const { waterTemperature, wantedTemperature, specificHeat, insideFilm, heaterPower, globalRadiation, coverTransmission, absorbedShare, sunlitArea, lookAhead, stepLength, barrelHeatTransfer } = seen;
    const { note, refuse } = solving;
    const waterMass = massOf(seen, waterTemperature);
    const shape = barrelShape(waterMass, waterTemperature, seen);
    const wall = wallOf(seen, shape);
    const solarGain = absorbedShare * coverTransmission * globalRadiation * (sunlitArea ?? shape.diameter * shape.height);
    const heatCapacity = waterMass * specificHeat;
    const { air, moments } = airAround(seen, solving);
    const rows = rowTimes(lookAhead, stepLength);
    const times = [...new Set([...rows, ...rowTimes(lookAhead, Math.min(stepLength, longestStep)), ...moments])].sort((a, b) => a - b);
    const transfer = barrelHeatTransfer ?? ((water: number, around: number) => barrelTransfer(wall, water, around).transfer);
    const barrel: Barrel = { start: waterTemperature, heatCapacity, area: shape.area, power: heaterPower + solarGain, air, transfer };
    const course = barrelCourse(barrel, times);
    const { temperatures, meanTransfer, frozenAt, boilingAt, residual, steps } = course;
    if (boilingAt !== undefined) {
      refuse(heaterPower > 0 ? 'heaterPower' : 'globalRadiation', 'heat that does not make the water boil', `${writeNumber(heaterPower + solarGain)} W of heater and sun`, heaterPower > 0 ? 'take a smaller heater, or a shorter time' : 'check sunlitArea and the amount of water');
    }
    const [endTemperature, barrelConductance] = [temperatures.at(-1)!, meanTransfer * shape.area];
    const timeConstant = heatCapacity / barrelConductance;
    const timeToReach = wantedTemperature === undefined ? undefined : course.timeAt(wantedTemperature);
    if (frozenAt !== undefined) note('danger', 'freezes', 'waterTemperatures', `The water is at 0 °C by ${hours(frozenAt)} and freezes from there on, which bursts barrel and pipes: drain it, lag it or keep a heater in it.`);
    if (wantedTemperature !== undefined && timeToReach === undefined) {
      const missing = wantedTemperature - endTemperature;
      const moreHeat = (): string => {
        const power = powerToReach(barrel, times, wantedTemperature, mostHeat - heaterPower);
        return power === undefined ? 'no heater does that in the time: give it longer, or pour warm water in' : `about ${writeNumber(roundedUp(power, 3))} W more of heat in it would do, or warm water poured in`;
      };
      const help = missing < 0 ? 'only colder air, or cold water poured in, brings it down' : frozenAt === undefined ? moreHeat() : 'lag it and keep a heater in it';
      note('caution', 'not-reached', 'timeToReach', `The water does not come to ${writeNumber(wantedTemperature - zeroCelsius)} °C within ${hours(lookAhead)}, at the end of which it has ${writeNumber(endTemperature - zeroCelsius)} °C: ${help}.`);
    }
    const stated = wantedTemperature === undefined ? [waterTemperature] : [waterTemperature, wantedTemperature];
    noteWarmBarrel(temperatures.reduce((most, one) => Math.max(most, one), Math.max(...stated)), stated, 'waterTemperatures', solving);
    if (heaterPower > 0) note('caution', mainsElectricity.code, 'heaterPower', mainsElectricity.text);
    const films = barrelHeatTransfer === undefined ? meanFilms(course, times, air.at, wall) : undefined;
    if (films) note('info', 'rough-films', 'barrelHeatTransfer', `The heat transfer of ${writeNumber(meanTransfer)} W/(m²·K) is good to about a fifth, and so is the time that the water takes; one evening with a thermometer in the barrel tells more.`);
    const biotNumber = films && biotNumberBehindWall(meanTransfer, insideFilm);
    if (biotNumber !== undefined && biotNumber > 0.1) note('caution', 'not-of-one-temperature', 'biotNumber', `With a Biot number of ${writeNumber(biotNumber)} the water lags behind at its middle: stir it, and measure in more than one place.`);
    const isRow = new Set(rows);
    return {
      endTemperature, timeToReach, timeConstant, halfwayTime: timeConstant * Math.LN2,
      times: Float64Array.from(rows),
      waterTemperatures: temperatures.filter((_, i) => isRow.has(times[i]!)),
      barrelArea: shape.area, barrelHeatTransfer: meanTransfer, barrelConductance,
      convectionFilm: films?.convection, radiationFilm: films?.radiation, wallConductivity: films && wallMaterials[seen.wallMaterial].conductivity, biotNumber, solarGain,
      convergence: { temperatureResidual: residual, steps },
    };
  },
});

/** The times of the rows, from 0 to the end, s. */
const rowTimes = (lookAhead: number, stepLength: number): number[] => {
  const whole = Math.floor((lookAhead / stepLength) * (1 + 1e-12));
  const rows = Array.from({ length: whole + 1 }, (_, row) => Math.min(row * stepLength, lookAhead));
  return lookAhead - rows[whole]! > 1e-9 * lookAhead ? [...rows, lookAhead] : [...rows.slice(0, -1), lookAhead];
};

/** How much warmer than wanted a barrel is reckoned to come by the heat that it is said to need, K: the steps of its course are good to a tenth of it. */
const room = 0.01;

/** Heat beside that of a barrel by which it comes to a temperature above all of its course, W; none where it takes more than the most. */
function powerToReach(barrel: Barrel, times: readonly number[], wanted: number, most: number): number | undefined {
  const highestWith = (power: number): number => barrelCourse({ ...barrel, power: barrel.power + power }, times).temperatures.reduce((high, one) => Math.max(high, one));
  const off = (power: number): number => highestWith(power) - wanted - room;
  let enough = Math.min(most, (barrel.heatCapacity * (wanted - barrel.start)) / times.at(-1)!);
  while (off(enough) < 0) {
    if (enough === most) return undefined;
    enough = Math.min(most, 2 * enough);
  }
  return bracketedRoot(off, 0, enough, { tolerance: 2e-5 * enough }).value;
}

/** Means of the films outside over the course, W/(m² K). */
function meanFilms({ temperatures }: BarrelCourse, times: readonly number[], airAt: (time: number) => number, wall: Parameters<typeof barrelTransfer>[0]) {
  let [convection, radiation] = [0, 0];
  const total = times.at(-1)!;
  for (let i = 1; i < times.length; i++) {
    const share = (times[i]! - times[i - 1]!) / total;
    const films = barrelTransfer(wall, (temperatures[i - 1]! + temperatures[i]!) / 2, airAt((times[i - 1]! + times[i]!) / 2));
    convection += share * films.convection;
    radiation += share * films.radiation;
  }
  return { convection, radiation };
}
