import { describe, expect, test } from 'vitest';
import { filterLoss, filterMeshes, fittingLoss, valveLoss } from '../../src/supply/index.js';

const noted = ({ notes }: { readonly notes: readonly { readonly code: string; readonly text: string }[] }, code: string) => notes.find((note) => note.code === code)?.text;

describe('valveLoss', () => {
  test('a valve larger than its pipe can be is refused, with the largest', () => {
    expect(() => valveLoss({ flow: '10 L/min', flowCoefficient: '400 Kv', diameter: '20 mm' })).toThrow(/flowCoefficient: at most \d+(\.\d+)? Kv, as much as a pipe of this bore has/);
    expect(valveLoss({ flow: '10 L/min', flowCoefficient: '400 Kv' }).lossCoefficient).toBeUndefined();
  });

  test('a valve that takes much is told, with the one that would not', () => {
    const flow = '40 L/min';
    const text = noted(valveLoss({ flow, flowCoefficient: '2 Kv' }), 'costly-valve');
    const better = Number(/one of ([\d.]+) Kv would take 20 kPa/.exec(text!)![1]);
    expect(Math.abs(valveLoss({ flow, flowCoefficient: `${better} Kv` }).pressureLoss.in('kPa') - 20)).toBeLessThan(0.02);
  });

  test('nonsense is refused', () => {
    expect(() => valveLoss({ flow: '50 m³/h', flowCoefficient: '1 Kv' })).toThrow(/a valve that can pass this flow/);
    expect(() => valveLoss({ flow: '50 m³/h', flowCoefficient: '1 Kv', diameter: '10 mm' })).toThrow(/runs at/);
  });
});

describe('fittingLoss', () => {
  test('without fittings loses nothing, and there is no valve like it', () => {
    const { pressureLoss, flowCoefficient } = fittingLoss({ flow: '10 L/min', diameter: '16 mm' });
    expect(pressureLoss.si).toBe(0);
    expect(flowCoefficient).toBeUndefined();
  });

  test('one valve of the flow coefficient costs as much', () => {
    const input = { flow: '10 L/min', diameter: '16 mm' } as const;
    const { flowCoefficient, pressureLoss } = fittingLoss({ ...input, fittings: { 'short elbow': 3, 'globe valve': 1 } });
    expect(valveLoss({ ...input, flowCoefficient: flowCoefficient! }).pressureLoss.si).toBeCloseTo(pressureLoss.si, 6);
  });

  test('no half elbows, no unknown fittings', () => {
    expect(() => fittingLoss({ flow: '10 L/min', diameter: '16 mm', fittings: { 'short elbow': 0.5 } })).toThrow(/short elbow/);
    expect(() => fittingLoss({ flow: '10 L/min', diameter: '16 mm', fittings: { knee: 1 } as object })).toThrow(/knee/);
  });
});

describe('filterLoss', () => {
  const filter = { flow: '18 L/min', referenceFlow: '2 m³/h', referenceLoss: '15 kPa' } as const;

  test('blocked as told it is to be flushed, and not before', () => {
    const { blockedShareAtFlush, flushLoss } = filterLoss(filter);
    const at = (blockedShare: number) => filterLoss({ ...filter, blockedShare });
    expect(at(blockedShareAtFlush.si).loadedLoss.si).toBeCloseTo(flushLoss.si, 6);
    expect(noted(at(blockedShareAtFlush.si + 0.01), 'flush-now')).toBeDefined();
    expect(noted(at(blockedShareAtFlush.si - 0.01), 'flush-now')).toBeUndefined();
  });

  test('too coarse for the drippers names a mesh that is not', () => {
    expect(noted(filterLoss({ ...filter, mesh: '80', smallestPassage: '1 mm' }), 'coarse-filter')).toMatch(/180 µm.*142.9 µm or finer, such as a mesh of 120/);
    expect(noted(filterLoss({ ...filter, filterOpening: '130 µm', smallestPassage: '1 mm' }), 'coarse-filter')).toBeUndefined();
    expect(filterLoss({ ...filter, smallestPassage: '0.1 mm' }).coarsestMesh).toBeUndefined();
  });

  test('too small for the flow says how much larger', () => {
    expect(noted(filterLoss({ ...filter, flow: '4 m³/h' }), 'small-filter')).toMatch(/60 kPa when clean.*1\.414 times the area/);
  });

  test('an opening and a mesh are one too many, and no garden filter stands 1 MPa', () => {
    expect(() => filterLoss({ ...filter, mesh: '80', filterOpening: '130 µm' })).toThrow(/an opening or a mesh/);
    expect(() => filterLoss({ ...filter, blockedShare: 0.99 })).toThrow(/blockedShare: a filter that still passes this flow/);
    expect(() => filterLoss({ ...filter, flow: '100 m³/h' })).toThrow(/is the reference flow right/);
  });

  test('meshes grow finer down the table', () => {
    const openings = Object.values(filterMeshes).map(({ opening }) => opening);
    expect(openings).toEqual([...openings].sort((a, b) => b - a));
  });
});
