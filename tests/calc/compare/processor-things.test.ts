import { expect, test } from 'vitest';
import { processorThings } from '../../../src/calc/compare/processor-things';
import { smallStage } from '../../cli/small-stage';

const { surfaces, zones } = smallStage;
const zone = zones.results.zones[0]!;

test('processorThings has each processor by its number, with the panels of its zone and its canvas', () => {
  const list = processorThings([{ ...zone, processor: 3 }], surfaces, ['m0', 'm1']);
  expect(list.things).toEqual([{ name: '3', content: 'm0 m1', detail: 'canvas 200 × 100 px' }]);
  expect(list.sayContent(0)).toEqual(['A C1 to C2, R1 to R1, 2 panels']);
  expect(list.sayDetail(0)).toEqual(['canvas 200 × 100 px']);
});

test('processorThings counts the panels that are there and no others', () => {
  const hole = { ...surfaces.surfaces[0]!, at: Int32Array.of(-1, 0), count: 1 };
  const content = (set: typeof surfaces) => processorThings([zone], set, ['m0', 'm1']).things[0]!.content;
  expect(content({ surfaces: [hole], offsets: [0], total: 1 })).toBe('m0');
  expect(content({ surfaces: [hole], offsets: [1], total: 2 })).toBe('m1');
  expect(content({ surfaces: [], offsets: [], total: 0 })).toBe('');
});
