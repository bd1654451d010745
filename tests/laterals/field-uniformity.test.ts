import { expect, test } from 'vitest';
import { fieldUniformity } from '../../src/laterals/index.js';

const catches = [100, 96, 104, 98, 101, 97, 99, 103, 95, 102, 100, 98, 97, 104, 99, 101];
const volumes = (values: readonly (number | null)[]) => fieldUniformity.try({ volumes: { unit: 'mL', values } });
const notesOf = (values: readonly (number | null)[]) => {
  const attempt = volumes(values);
  if (!attempt.ok) throw attempt.error;
  return attempt.value.notes;
};

test('volumes, flows and times of the same emitters say the same', () => {
  const ways = [
    fieldUniformity({ volumes: { unit: 'mL', values: catches } }),
    fieldUniformity({ flows: { unit: 'mL/min', values: catches } }),
    fieldUniformity({ fillTimes: { unit: 's', values: catches.map((volume) => 6000 / volume) } }),
  ];
  for (const way of ways) expect(way.lowQuarterUniformity.in('%')).toBeCloseTo((100 * (95 + 96 + 97 + 97)) / 4 / 99.625, 10);
  for (const way of ways) expect(way.christiansenUniformity.si).toBeCloseTo(ways[0]!.christiansenUniformity.si, 12);
  expect(ways[0]!.notes).toEqual([]);
});

test('a statistical uniformity between two classes is called nothing', () => {
  expect(fieldUniformity({ volumes: { unit: 'mL', values: [90, 110, 90, 110, 90, 110, 90, 110] } })).toMatchObject({ lowQuarterClass: 'excellent', statisticalClass: 'good' });
  expect(fieldUniformity({ volumes: { unit: 'mL', values: [93, 107, 93, 107, 93, 107, 93, 107] } })).not.toHaveProperty('statisticalClass');
});

test('a zone that is good by customary classes is not called uneven, one that is fair is', () => {
  const zone = (least: number) => [...Array<number>(12).fill(100), ...Array<number>(4).fill(least)];
  expect(notesOf(zone(80))).toEqual([]);
  expect(notesOf(zone(70))).toMatchObject([{ code: 'uneven', severity: 'caution', text: expect.stringContaining('fair by customary classes') }]);
});

test('missing readings are left out and told; a blocked emitter counts and is pointed at', () => {
  expect(notesOf([...catches, null])).toMatchObject([{ code: 'missing-readings', field: 'volumes' }]);
  expect(notesOf([...catches, null, 0])).toMatchObject([{ code: 'missing-readings' }, { code: 'weak-emitters', severity: 'caution', text: expect.stringContaining('Emitter 18 in the order given') }, { code: 'uneven' }]);
  expect(notesOf([100, 98, 97, 40])).toMatchObject([{ code: 'few-readings' }, { code: 'weak-emitters' }, { code: 'uneven' }]);
});

test.each<[string, object, string]>([
  ['nothing', {}, ''],
  ['two kinds of readings', { volumes: { unit: 'mL', values: [1, 2] }, fillTimes: { unit: 's', values: [1, 2] } }, 'fillTimes'],
  ['one reading', { volumes: { unit: 'mL', values: [100, null] } }, 'volumes'],
  ['emitters that all give nothing', { flows: { unit: 'L/h', values: [0, 0, 0] } }, 'flows'],
  ['a time of nought', { fillTimes: { unit: 's', values: [0, 60] } }, 'fillTimes'],
])('%s is refused', (_, input, path) => {
  expect(fieldUniformity.try(input)).toMatchObject({ ok: false, error: { problems: [{ path }] } });
});
