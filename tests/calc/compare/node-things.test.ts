import { expect, test } from 'vitest';
import { nodeThings } from '../../../src/calc/compare/node-things';

const crop = (zone: number, x: number) => ({ zone, processor: zone + 1, x, y: 0, width: 200, height: 100 });
const node = { name: 'N1', canvasWidth: 400, canvasHeight: 100, crops: [crop(0, 0), crop(1, 200)] };

test('nodeThings says which processors a node feeds and its canvas', () => {
  const list = nodeThings([node, { ...node, name: 'N2', crops: [crop(2, 0)] }], ['0', '1', '2']);
  expect(list.sayContent(0)).toEqual(['feeds processors 1, 2']);
  expect(list.sayContent(1)).toEqual(['feeds processor 3']);
  expect(list.sayDetail(0)).toEqual(['canvas 400 × 100 px, of it 200 × 100 at 0, 0; 200 × 100 at 200, 0']);
});

test('nodeThings takes a node as the same while it feeds the same processors', () => {
  const of = (given: typeof node, marks: string[]) => nodeThings([given], marks).things[0]!;
  const plain = of(node, ['0', '1']);
  expect(of({ ...node, canvasHeight: 120 }, ['0', '1']).content).toBe(plain.content);
  expect(of({ ...node, canvasHeight: 120 }, ['0', '1']).detail).not.toBe(plain.detail);
  expect(of(node, ['0', 'gone 1']).content).not.toBe(plain.content);
});
