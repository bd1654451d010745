import Qty from 'js-quantities';
import psychrolib from 'psychrolib';
import type * as units from '../src/units/index.js';
import type * as vapour from '../src/vapour/index.js';
import { agreeWithin, built, type Comparison } from './comparison.js';

const { quantity, column } = await built<typeof units>('units');
const { vapourPressureDeficit, vapourPressureDeficitColumn, wetBulbColumn } = await built<typeof vapour>('vapour');

/** Enough calls in a run for the clock, each with an input of its own. */
const calls = 1000;
const celsius = Array.from({ length: calls }, (_, i) => 10 + i / 50);
const humidity = 0.65;

function singleCalls(): Comparison[] {
  psychrolib.SetUnitSystem(psychrolib.SI);
  const pressure = 101325;
  const ratios = celsius.map((t) => psychrolib.GetHumRatioFromRelHum(t, humidity, pressure));
  const quantities = celsius.map((t) => ({ airTemperature: quantity(`${t} °C`, 'temperature'), relativeHumidity: humidity }));
  const texts = celsius.map((t) => ({ airTemperature: `${t} °C` as const, relativeHumidity: '65 %' as const }));
  const psi = celsius.map((t) => `${t} psi` as const);
  return [
    {
      name: 'deficit, checked, from quantities',
      ours: { name: 'vapourPressureDeficit', run: () => quantities.forEach((input) => vapourPressureDeficit(input)) },
      theirs: { name: 'psychrolib.GetVaporPressureDeficit, bare', run: () => celsius.forEach((t, i) => psychrolib.GetVaporPressureDeficit(t, ratios[i]!, pressure)) },
      limit: { atMost: 3 },
      agree: () => celsius.forEach((t, i) => {
        agreeWithin(0.003, vapourPressureDeficit(quantities[i]!).vapourPressureDeficit.in('Pa'), psychrolib.GetVaporPressureDeficit(t, ratios[i]!, pressure));
      }),
    },
    {
      name: 'deficit, checked, from two texts',
      ours: { name: 'vapourPressureDeficit', run: () => texts.forEach((input) => vapourPressureDeficit(input)) },
      theirs: { name: 'js-quantities, one text read and converted', run: () => psi.forEach((text) => new Qty(text).to('kPa').scalar) },
      limit: { atLeast: 5 },
      agree: () => agreeWithin(1e-6, quantity(psi[0]!, 'pressure').in('kPa'), new Qty(psi[0]!).to('kPa').scalar),
    },
  ];
}

function deficits(): Comparison {
  const rows = 5_000_000;
  const t = Float64Array.from({ length: rows }, (_, i) => 10 + (i % 2000) / 100);
  const h = Float64Array.from({ length: rows }, (_, i) => 40 + (i % 97) / 2);
  const input = { airTemperature: column(t, '°C', 'temperature'), relativeHumidity: column(h, '%', 'share') };
  const loop = () => {
    const deficit = new Float64Array(rows);
    for (let i = 0; i < rows; i++) deficit[i] = 0.6108 * Math.exp((17.27 * t[i]!) / (t[i]! + 237.3)) * (1 - h[i]! / 100);
    return deficit;
  };
  const ours = () => vapourPressureDeficitColumn(input).vapourPressureDeficit;
  return {
    name: `deficit of ${rows} logger rows`,
    ours: { name: 'vapourPressureDeficitColumn', run: ours },
    theirs: { name: 'bare loop of Math.exp', run: loop },
    limit: { atMost: 2 },
    agree: () => agreeWithin(0.003, ours().in('kPa')[1234]!, loop()[1234]!),
  };
}

function wetBulbs(): Comparison {
  const rows = 10_000;
  const t = Float64Array.from({ length: rows }, (_, i) => 10 + (i % 2000) / 100);
  const h = Float64Array.from({ length: rows }, (_, i) => 40 + (i % 97) / 2);
  const input = { airTemperature: column(t, '°C', 'temperature'), relativeHumidity: column(h, '%', 'share') };
  const ours = () => wetBulbColumn(input).wetBulbTemperature;
  const theirs = () => t.map((one, i) => psychrolib.GetTWetBulbFromRelHum(one, h[i]! / 100, 101325));
  return {
    name: `wet bulb of ${rows} logger rows`,
    ours: { name: 'wetBulbColumn', run: ours },
    theirs: { name: 'psychrolib.GetTWetBulbFromRelHum', run: theirs },
    limit: { atLeast: 10 },
    agree: () => agreeWithin(0.003, ours().in('°C')[1234]!, theirs()[1234]!),
  };
}

export const vapourComparisons = (): Comparison[] => [...singleCalls(), deficits(), wetBulbs()];
