import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { timeUntilEmpty } from '../dosing/index.js';
import { drawdown } from '../pressure-tank/index.js';
import { quantity } from '../units/by-name.js';
import { time, volume } from '../units/dimensions.js';
import type { Quantity } from '../units/quantity.js';
import { threeDigits } from '../units/in-words.js';
import { writeNumber } from '../units/write.js';
import { atmosphericPressureAtElevation } from '../vapour/index.js';
import { airOutputs, assessAir, loggerFields } from './air.js';
import { newAssessor, type Assessor } from './attempt.js';
import { assessBarrel, barrelDayOutputs } from './barrel-day.js';
import { assessFeed, feedFields, feedOutputs, usualWaterTemperature } from './feed.js';
import { finding, inOrder, ownBasis } from './finding.js';
import { assessHouse, houseFields, houseOutputs } from './house.js';
import { assessLoop, loopFields, loopOutputs } from './loop.js';
import { assessSupply, driverOf, supplyOutputs } from './supply.js';
import { supplyFields, zoneFields } from './water-fields.js';
import { assessZone, zoneOutputs } from './zone.js';
import { lightOfDay, sunFields } from './zone-day.js';
import { addEventFindings } from './zone-event.js';

/** The longest that a day of irrigation can be, s. */
const day = 86_400;

/** Says so where the zones, one after the other, take longer than a day has. */
function addTimeFindings(zones: readonly { readonly runTime: Quantity<'time'> }[], { add }: Assessor): void {
  const total = zones.reduce((sum, zone) => sum + zone.runTime.si, 0);
  if (total <= day) return;
  const text = `The zones run ${writeNumber(total / 3600)} h in all, more than a day has if they run one after the other: take emitters that give more, more of them, or let zones run together.`;
  add(finding(ownBasis, 'zones', 'danger', 'day-too-short', text));
}

/** Says so where a barrel does not last a day. */
function addBarrelFinding(dailyVolume: number, barrel: number, { add }: Assessor): void {
  if (dailyVolume <= barrel) return;
  const text = `A day takes ${writeNumber(threeDigits(dailyVolume * 1000))} L of feed and the barrel holds ${writeNumber(barrel * 1000)} L: mix it ${Math.ceil(dailyVolume / barrel)} times a day, or take a larger one.`;
  add(finding(ownBasis, 'barrel.volume', 'caution', 'barrel-too-small', text));
}

/** What all zones are given in a day, and what their plants take up of it, m³. */
const dayOf = (zones: readonly { readonly dailyVolume: number; readonly plants: number; readonly volumePerPlant: Quantity<'volume'> }[]) => ({
  given: zones.reduce((sum, { dailyVolume }) => sum + dailyVolume, 0),
  taken: zones.reduce((sum, { plants, volumePerPlant }) => sum + plants * volumePerPlant.si, 0),
});

/** The description of a greenhouse. What the calculations behind it take is theirs to define. */
function describedGreenhouse() {
  const { elevation } = atmosphericPressureAtElevation.inputs;
  return {
    name: field.optional(field.text(80)),
    site: field.asWritten(field.group({ elevation })),
    sun: field.optional(field.asWritten(field.group(sunFields()))),
    ...feedFields(),
    ...supplyFields(),
    zones: field.list(field.group(zoneFields()), { limits: [1, 100] }),
    loop: field.optional(field.asWritten(field.group(loopFields()))),
    house: field.optional(field.asWritten(field.group(houseFields()))),
    logger: field.optional(field.group(loggerFields())),
  };
}

/**
 * A whole greenhouse from one description: what to weigh into the barrel, what the meter should show, how the water gets to the last dripper, how
 * long each zone runs and how evenly it gives, how the pump goes meanwhile, when the shots of a day come and the next barrel is mixed, when the loop of the
 * drain must be let out, what the house loses and whether it fogs, how dry the air is, and what to mend first.
 *
 * Takes, the same as JSON, where every quantity is a text with its unit:
 * - `site` (elevation); `sourceWater` as `waterAnalysis` does, with its temperature (0 to 40 °C, 20 °C where not given); `barrel` (its volume, and the pH
 *   that the feed is kept at, 6 where not given); `targets`, `salts` at hand, `scales` and all else as `weighOut` does; perhaps an `acidTreatment` of
 *   the water as `acidDose` takes it and an `injector` with stock tanks as `stockTanks` does;
 * - `pump` with its flow, or better its curve as `pumpAtTank` takes it, and the `tank` with its switch as `irrigationCycle` does; perhaps the
 *   `suctionLine` that the pump draws through, as `suction` takes it;
 * - `zones`: plants, the volume that each takes up in a day, drain, shots, and one of its equal laterals as `lateral` takes it, with the pressure that it
 *   gets; perhaps whether they run empty between shots, and the `gutter` that takes their drain;
 * - or, in place of that pressure, the way of the water: a `main` from the tank to the valves of the zones (and for its surge the wall and the time in which
 *   a valve shuts), perhaps a `filter` before it, and for each zone a `branch` with the Kv of its valve, the pressure that a regulator is set to, pipe, the
 *   height of the laterals above the tank and their distance. Valve and regulator stand at the height of the tank, and one zone runs at a time;
 * - perhaps a `sump` that collects the drain, as `sumpCycle` takes it;
 * - for the course of a day: the `sun` (latitude, day of the year and the radiation of a usual day outside, as `radiationThroughDay` takes it), and in each zone a `rootZone`
 *   (plants to a square metre and their substrate, and perhaps the water in it at midnight and a plan of shots, as `irrigationDay` takes them). Plants take up their volume as the light
 *   comes; left to itself a shot comes when half its share of that is taken up, then one and a half, and so on, and the substrate begins the day as it ends it;
 * - in the `barrel` a wanted temperature with what `barrelWarmUp` and `barrelPlan` take; the air around it is that of the logger unless given;
 * - the `loop` of the drain, as `loopRun` takes it, refilled with the feed; the `house` as `houseHeatLoss` takes it on a cold night, with the humidity of that night, and perhaps its
 *   `heater`, its `vents` on a warm day (the sun at its highest is that of the `sun` unless given) and barrels as a heat `store`;
 * - a `logger` record as `airRecord` takes it, judged against a band of deficits (0.2 to 1 kPa, after Grange and Hand 1987); with `outsideTemperature` and a house also for a wet cover.
 *
 * Gives the `feed` sheet with the acid, the intervals that scales and bags leave, the `meter` reading, what may settle out and the stock `tanks`; the
 * `zones`, with a main at the mean pressure of a shot and beside it at cut-in and cut-out; `suction`, `filter`, `surge` and `sump` at the flow of the zone that
 * takes most; in each zone the `irrigation` of a day; the volume of feed that a day takes, how long the barrel lasts, the `barrelPlan` and how a fresh barrel warms (`warmUp`); the `loop`,
 * the `house` and the `air`; and the `findings`, the gravest first, each with the part that it
 * concerns, the calculation that it comes from and the publications behind that. What there is to say of the pump's cycles is said of the zone that makes
 * it start most. A part without a result is left out, and a finding of danger says why; so are the volume of a day and what rests on it where a zone has none.
 * @throws InputError that lists every problem of the description.
 * @example
 * const { zones, feed } = assessGreenhouse(assessGreenhouse.example);
 * zones[0].runTime.in('min') // => 36.0
 * zones[0].appliedVolume.in('L') // => 2.40
 */
export const assessGreenhouse = /* @__PURE__ */ calculation({
  id: 'assessGreenhouse',
  title: 'A whole greenhouse assessed from one description',
  inputs: describedGreenhouse,
  outputs: () => ({
    name: output.optional(output.text()),
    feed: output.optional(feedOutputs()),
    zones: output.list(zoneOutputs()),
    dailyVolume: output.optional(output.quantity(volume, 'L')),
    barrelLasts: output.optional(output.quantity(time, 'd')),
    ...barrelDayOutputs(),
    ...supplyOutputs(),
    loop: loopOutputs(),
    house: houseOutputs(),
    air: airOutputs(),
    findings: output.list(output.group({
      severity: output.choice(['danger', 'caution', 'info']),
      code: output.text(), where: output.text(), text: output.text(), calculation: output.text(), sources: output.list(output.text()),
    })),
  }),
  equation: 'the calculations behind it, one after the other',
  sources: ['grange-hand-1987'],
  example: {
    site: { elevation: '120 m' },
    sourceWater: { water: { Ca: '52 mg/L', Mg: '7 mg/L', Na: '14 mg/L', Cl: '22 mg/L', S: '9 mg/L' }, waterAlkalinity: '2.3 meq/L', waterTemperature: '16 °C' },
    barrel: { volume: '120 L' },
    targets: { 'N-NO3': '120 mg/L', P: '35 mg/L', K: '180 mg/L', Ca: '120 mg/L', Mg: '30 mg/L' },
    salts: [{ salt: 'calcium-ammonium-nitrate-decahydrate' }, { salt: 'potassium-nitrate' }, { salt: 'monopotassium-phosphate' }, { salt: 'magnesium-sulfate-heptahydrate' }],
    scales: [{ division: '0.1 g' }],
    pump: { pumpFlow: '13 L/min', motorPower: '450 W' },
    tank: { tankVolume: '18 L', preCharge: '38 psi', cutIn: '40 psi', cutOut: '60 psi' },
    zones: [{
      name: 'aubergines in bags', plants: 12, volumePerPlant: '1.8 L', drainShare: '25 %', shotsPerDay: 6, laterals: 2,
      lateral: { outlets: 6, spacing: '60 cm', diameter: '13.6 mm', emitterFlow: '4 L/h', emitterPressure: '1 bar', emitterExponent: 0.5, inletPressure: '1 bar' },
    }],
    logger: { readingTime: { unit: 'h', values: [6, 10, 14, 18] }, airTemperature: { unit: '°C', values: [12, 19, 27, 21] }, relativeHumidity: { unit: '%', values: [97, 82, 52, 70] }, longestGap: '4 h' },
  },
  check: ({ logger, main, sun, zones }, problem) => {
    if (logger && logger.tooWetBelow >= logger.tooDryAbove) problem(['logger', 'tooWetBelow'], 'a deficit below tooDryAbove', 'one as high or higher');
    if (!sun && zones.some(({ rootZone }) => rootZone)) problem(['sun'], 'the light of a usual day, for the rootZone of a zone', 'none', 'latitude, dayOfYear and radiationSum');
    const names = zones.map(({ name }) => name);
    zones.forEach(({ name, lateral: { inletPressure, meanEmitterFlow }, branch }, i) => {
      if (names.indexOf(name) < i) problem(['zones', i, 'name'], 'a name of its own', `'${name}' again`);
      if (!main && branch) problem(['zones', i, 'branch'], 'a main that it branches off', 'none');
      if (main && (inletPressure ?? meanEmitterFlow) !== undefined) problem(['zones', i, 'lateral', inletPressure === undefined ? 'meanEmitterFlow' : 'inletPressure'], 'nothing, where a main leads to the laterals', 'a value', 'what they get comes of the tank; a regulator has its setPressure in the branch');
    });
  },
  solve: (seen) => {
    const { name, site, sun, zones: described, loop, house: shell, logger, pump, suctionLine, tank, filter, main, sump, ...feeding } = seen;
    const { barrel, sourceWater: { waterTemperature = usualWaterTemperature } } = feeding;
    const supply = { pump, suctionLine, tank, filter, main, sump };
    const assessor = newAssessor();
    const feed = assessFeed(feeding, assessor);
    const atmosphere = assessor.run(atmosphericPressureAtElevation, 'site', site)?.atmosphericPressure;
    assessor.run(drawdown, 'tank', { ...tank, atmosphericPressure: atmosphere });
    const light = sun && lightOfDay(sun, assessor);
    const driver = driverOf(supply, atmosphere, waterTemperature, assessor);
    const zones = described.flatMap((zone, i) => assessZone(zone, `zones[${i}]`, { supply, driver, waterTemperature, light }, assessor) ?? []);
    const parts = assessSupply(supply, driver, zones.map(({ atCutOut, zoneFlow, drainFlow }) => ({ most: atCutOut?.zoneFlow ?? zoneFlow, drain: drainFlow })), waterTemperature, assessor);
    addEventFindings(zones, assessor);
    addTimeFindings(zones, assessor);
    const house = shell && assessHouse(shell, light, assessor);
    const air = logger && assessAir(logger, house && { coverHeatTransfer: house.coverHeatTransfer, insideFilmCoefficient: shell?.insideFilmCoefficient }, assessor);
    const day = zones.length === described.length ? dayOf(zones) : undefined;
    const through = day && assessBarrel(barrel, zones, air, waterTemperature, assessor);
    if (day) addBarrelFinding(day.given, quantity(barrel.volume, 'volume').si, assessor);
    return {
      name, feed, zones,
      dailyVolume: day?.given,
      barrelLasts: day && timeUntilEmpty(quantity(barrel.volume, 'volume').si, day.given),
      warmUp: through?.warmUp, barrelPlan: through?.barrelPlan,
      ...parts,
      loop: loop && feed && day && assessLoop(loop, { ions: feed.ions, ...day }, assessor),
      house, air, findings: inOrder(assessor.findings),
    };
  },
});
