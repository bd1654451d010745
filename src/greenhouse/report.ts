import type { assessGreenhouse } from './assess-greenhouse.js';
import { salts, type Salt } from '../salts/index.js';
import { sources, type SourceKey } from '../sources.js';
import type { Quantity, UnitOf } from '../units/quantity.js';
import { writeNumber } from '../units/write.js';
import { clock, dayAndClock, threeDigits } from '../units/in-words.js';
import { isStanding } from './finding.js';

type Assessment = ReturnType<typeof assessGreenhouse>;

const width = 80;
const hanging = '   ';

/** Words in lines of at most 80 columns after a mark, the later lines indented as far. */
function wrapped(text: string, mark = '', indent = mark === '' ? '' : hanging): string {
  const lines = [''];
  for (const word of text.split(' ')) {
    const line = lines.at(-1)!;
    if (line !== '' && indent.length + line.length + 1 + word.length > width) lines.push(word);
    else lines[lines.length - 1] = line === '' ? word : `${line} ${word}`;
  }
  return mark.padEnd(indent.length) + lines.join(`\n${indent}`);
}

/** Rows of cells as columns: the first flush left and shortened where it must be, the others flush right. */
function table(rows: readonly (readonly string[])[]): string {
  const widths = rows[0]!.map((_, column) => Math.max(...rows.map((row) => row[column]!.length)));
  const rest = widths.slice(1).reduce((sum, one) => sum + one + 2, 0);
  const first = Math.min(widths[0]!, width - 2 - rest);
  const short = (text: string): string => (text.length > first ? `${text.slice(0, first - 1)}…` : text).padEnd(first);
  return rows.map(([head = '', ...cells]) => `  ${short(head)}${cells.map((cell, i) => `  ${cell.padStart(widths[i + 1]!)}`).join('')}`.trimEnd()).join('\n');
}

const headed = (title: string, lines: readonly string[]): string => [title, '-'.repeat(title.length), ...lines].join('\n');
const section = (title: string, ...parts: readonly string[]): string => headed(title, [parts.join('\n\n')]);

const percent = (fraction: number): string => `${(Math.round(fraction * 1000) / 10 + 0).toFixed(1)} %`;

/** A mass with every digit that a scale shows. */
const inFull = (mass: Quantity<'mass'>): string => `${Number(mass.in(mass.unit as UnitOf<'mass'>).toPrecision(10))} ${mass.unit}`;

/** The plain name of a salt of the table; any other name as it is. */
const productName = (name: string): string => (Object.hasOwn(salts, name) ? (salts as Readonly<Record<string, Salt>>)[name]!.name : name);

function feedSection({ feed }: Assessment): string {
  if (!feed) return section('What to weigh in', 'There is no feed sheet; see below.');
  const { acidTreatment, portions, totalMass, misfits, nutrientIntervals, meter, alkalinity } = feed;
  const openness = (form: string): string => {
    const interval = (nutrientIntervals as Readonly<Record<string, (typeof nutrientIntervals)['K']>>)[form];
    return interval && interval.massConcentration.si > 0 ? percent((interval.highConcentration.si - interval.lowConcentration.si) / 2 / interval.massConcentration.si) : '';
  };
  return section(
    'What to weigh in',
    ...(acidTreatment ? [wrapped(`First the acid, into the water: ${String(acidTreatment.productVolume ?? acidTreatment.mass)}, to pH ${acidTreatment.pH.toFixed(1)}.`)] : []),
    table([...portions.map(({ name, mass }) => [productName(name), inFull(mass)]), ['in all', inFull(totalMass)]]),
    table([
      ['nutrient', 'wanted', 'reached', 'miss', 'open by'],
      ...Object.entries(misfits).map(([form, { target, reached, relativeDifference }]) => [form, String(target), String(reached), relativeDifference ? percent(relativeDifference.si) : '', openness(form)]),
    ]),
    wrapped([
      'Open by: what scale and bag leave, either way.',
      ...(meter ? [`The meter should show ${String(meter.conductivityAtReference)} at 25 °C, give or take ${meter.conductivityUncertainty.in('mS/cm').toFixed(2)} mS/cm; without temperature compensation ${String(meter.conductivity)}.`] : []),
      `Alkalinity left: ${String(alkalinity)}.`,
    ].join(' ')),
  );
}

function stockSection({ feed }: Assessment): string | undefined {
  if (!feed?.tanks) return undefined;
  return section('Stock tanks, in the order of dissolving', ...feed.tanks.map(({ name, portions }) =>
    `Tank ${name}\n${table(portions.map((portion) => [productName(portion.name), inFull(portion.mass)]))}`));
}

function zoneSection({ zones, dailyVolume, barrelLasts }: Assessment): string {
  if (zones.length === 0) return section('How long each zone runs', 'No zone has a result; see below.');
  return section(
    'How long each zone runs',
    table([
      ['zone', 'takes up', 'is given', 'a day', 'a shot'],
      ...zones.map(({ name, volumePerPlant, appliedVolume, runTime, runTimePerShot }) => [name, volumePerPlant, appliedVolume, runTime, runTimePerShot].map(String)),
    ]),
    table([
      ['zone', 'flow', 'inlet', 'last', 'even to'],
      ...zones.map(({ name, zoneFlow, inletPressure, endPressure, uniformity }) => [name, zoneFlow, inletPressure, endPressure, percent(uniformity.si)].map(String)),
    ]),
    table([
      ['zone', 'pump runs', 'rests', 'starts'],
      ...zones.map(({ name, pump }) => [name, ...[pump?.pumpRunTime, pump?.pumpRunTime && pump.pumpRestTime, pump?.startsPerHour].map((value) => String(value ?? '-'))]),
    ]),
    dailyVolume && barrelLasts ? `A day takes ${String(dailyVolume)} of feed; a full barrel lasts ${String(barrelLasts)}.` : 'What a day takes is not known while a zone has no result.',
  );
}

/** Barrels to come that are told one by one. */
const barrelsTold = 4;

function daySection({ zones, barrelPlan, warmUp }: Assessment): string | undefined {
  const days = zones.flatMap(({ name, irrigation, dailyDrain }) => (irrigation ? [{ name, dailyDrain, ...irrigation }] : []));
  const lines = [
    days.length > 0 && `In all ${writeNumber(threeDigits(days.reduce((sum, { dailyDrain }) => sum + dailyDrain.in('L'), 0)))} L drain in a day.`,
    ...barrelLines(barrelPlan),
    warmUp && (warmUp.timeToReach ? `A fresh barrel is warm ${String(warmUp.timeToReach)} after it was mixed, at the latest.` : 'A fresh barrel does not come to the temperature that is wanted; see below.'),
  ].filter((line) => typeof line === 'string');
  if (days.length === 0 && lines.length === 0) return undefined;
  return section(
    'How a day goes',
    ...(days.length > 0 ? [
      table([
        ['zone', 'shots', 'a shot', 'drain', 'in all', 'least held'],
        ...days.map(({ name, shots, drainShare, dailyDrain, driestWater, driestTime }) => [name, String(shots.length), shots[0] ? String(shots[0].shotVolume) : '-', drainShare ? percent(drainShare.si) : '-', String(dailyDrain), `${String(driestWater)} at ${clock(driestTime.si)}`]),
      ]),
      days.map(({ name, shots }) => wrapped(`${name}: ${shots.map(({ shotTime }) => clock(shotTime.si)).join(', ')}`)).join('\n'),
    ] : []),
    ...(lines.length > 0 ? [wrapped(lines.join(' '))] : []),
  );
}

function barrelLines(plan: Assessment['barrelPlan']): readonly string[] {
  if (!plan) return [];
  const [next] = plan.fills;
  if (!next) return ['A barrel that is full at midnight lasts for more than a week.'];
  const mixing = plan.fills.slice(0, barrelsTold).map(({ mixInHours, readyTime }) => (mixInHours ? `by ${dayAndClock(mixInHours.si)}` : `when its vessel is free, to be ready at ${dayAndClock(readyTime.si)}`));
  return [`A barrel that is full at midnight is used up at ${dayAndClock(next.emptyTime.si)}; mix the next ${mixing.join(', then ')}${plan.fills.length > barrelsTold ? ', and so on' : ''}.`];
}

function loopSection({ loop }: Assessment): string | undefined {
  if (!loop) return undefined;
  const { times, concentrations, limitTimes, dischargeEvents, dischargedVolume, nitrogenMass, phosphorusMass } = loop;
  const days = writeNumber(times.in('d').at(-1)!);
  const limits = limitTimes.map(({ ion, ionLimit, timeUntilLimit }) => (timeUntilLimit ? `${ion} is at its limit of ${String(ionLimit)} after ${String(timeUntilLimit)}.` : `${ion} has come to ${String(concentrations[ion]!.at(-1)!)} after ${days} d; its limit is ${String(ionLimit)}.`));
  const out = dischargedVolume.si === 0
    ? `Nothing is let out in ${days} d.`
    : `In ${days} d ${String(dischargedVolume)} are ${dischargeEvents.length === 0 ? 'lost as drain' : `let out${dischargeEvents.length === 1 ? '' : ` in ${dischargeEvents.length} turns`}, first on day ${dischargeEvents[0]!.day}`}, with ${String(nitrogenMass)} of nitrogen and ${String(phosphorusMass)} of phosphorus.`;
  return section('The loop of the drain', wrapped([...limits, out].join(' ')));
}

function houseSection({ house }: Assessment): string | undefined {
  if (!house) return undefined;
  const { heatLoss, lowestHeatLoss, highestHeatLoss, heater, night, vents, store } = house;
  const lines = [
    `On a cold night the house loses ${String(heatLoss)}, ${String(lowestHeatLoss)} to ${String(highestHeatLoss)}.`,
    heater && `A heater of ${String(heater.heaterPower)} would do; the night takes ${String(heater.fuelMass ?? heater.fuelVolume ?? heater.heaterEnergy)}.`,
    store && `The barrels give ${String(store.meanPower)} of that.`,
    night && `The cover is at ${String(night.coverTemperature)} and ${night.wet ? `fogs; it would stay dry below ${night.condensationHumidity ? percent(night.condensationHumidity.si) : 'any humidity'}` : 'stays dry'}.`,
    vents && `In the sun the house comes to ${String(vents.houseTemperature)} with its vents open.`,
  ].filter((line) => line !== undefined);
  return headed('The house', lines.map((line) => wrapped(line)));
}

function supplySection({ suction, filter, surge, sump }: Assessment): string | undefined {
  const lines = [
    suction && `The pump has ${String(suction.availableSuctionHead)} of suction head at its cut-in${suction.spareSuctionHead ? `, ${String(suction.spareSuctionHead)} more than it needs` : ''}.`,
    filter && `The filter takes ${String(filter.loadedLoss)}, clean ${String(filter.cleanLoss)}; flush it at ${String(filter.flushLoss)}.`,
    surge && `A valve that shuts brings the main to ${String(surge.highestPressure)}${surge.pressureRating ? `; the pipe bears ${String(surge.pressureRating)}` : ''}.`,
    sump && `The pump of the sump starts ${String(sump.startsPerHour)}${sump.runTime && sump.restTime ? `, runs ${String(sump.runTime)} and rests ${String(sump.restTime)}` : ''}.`,
  ].filter((line) => line !== undefined);
  return lines.length > 0 ? headed('How the water gets there', lines.map((line) => wrapped(line))) : undefined;
}

function airSection({ air }: Assessment): string | undefined {
  if (!air) return undefined;
  const { meanDeficit, lowestDeficit, highestDeficit, tooWetShare, tooDryShare, coveredTime, leafWetTime, coverWetTime, meanDailyLight, degreeDays } = air;
  const more = [
    coverWetTime && `The cover is wet for ${String(coverWetTime)}.`, leafWetTime && `Leaves are wet for ${String(leafWetTime)}.`,
    meanDailyLight && `Light: ${String(meanDailyLight)}.`, degreeDays && `Degree-days: ${String(degreeDays)}.`,
  ].filter((line) => line !== undefined);
  return section('How dry the air is', wrapped(
    `Vapour pressure deficit ${String(lowestDeficit)} to ${String(highestDeficit)}, mean ${String(meanDeficit)}, over ${String(coveredTime)}. Too wet for ${percent(tooWetShare.si)} of that, too dry for ${percent(tooDryShare.si)}.${more.map((line) => ` ${line}`).join('')}`));
}

const marks = { danger: '!!', caution: '!', info: '-' } as const;

function findingSection(title: string, findings: Assessment['findings']): string | undefined {
  if (findings.length === 0) return undefined;
  return headed(title, findings.map(({ severity, where, text, calculation }) => wrapped(`${where}: ${text} [${calculation}]`, marks[severity])));
}

/** Authors and year of a publication, or the first words of its title. */
const shortly = (key: string): string => /^.*?\(\d{4}[^)]*\)|^[^.]*/.exec(sources[key as SourceKey].citation)![0];

/** The calculations that the findings come from, each with what it rests on. */
function sourceSection(findings: Assessment['findings']): string | undefined {
  if (findings.length === 0) return undefined;
  const behind = new Map<string, Set<string>>();
  for (const { calculation, sources: keys } of findings) behind.set(calculation, new Set([...(behind.get(calculation) ?? []), ...keys]));
  return headed('What this rests on', [...behind].map(([calculation, keys]) => wrapped(`${calculation}: ${[...keys].map(shortly).join('; ')}`, '-')));
}

/**
 * An assessment for a person to read, in 80 columns: what to weigh in, what the meter should show, how long each zone runs, how a day goes, how the
 * loop of the drain, the house and its air are, and what to mend, the gravest first.
 */
export function reportOf(assessment: Assessment): string {
  const { name, findings } = assessment;
  const toMend = findings.filter((one) => one.severity !== 'info' && !isStanding(one));
  return [
    name,
    feedSection(assessment),
    stockSection(assessment),
    zoneSection(assessment),
    daySection(assessment),
    supplySection(assessment),
    loopSection(assessment),
    houseSection(assessment),
    airSection(assessment),
    findingSection('What to mend', toMend),
    findingSection('Take care', findings.filter(isStanding)),
    findingSection('Good to know', findings.filter(({ severity }) => severity === 'info')),
    sourceSection(findings),
  ].filter((part) => part !== undefined).join('\n\n');
}
