import { expect, test } from 'vitest';
import { compareMaterials } from '../../../src/calc/compare/compare-materials';

const count = (value: number) => [{ value, unit: 'count' }];

test('compareMaterials lists the lines whose needed count is another one, by name', () => {
  const before = [
    { name: 'Panel', needed: 12 },
    { name: 'Breakout', needed: 1 },
    { name: 'Jumper', needed: 10 },
  ];
  const after = [
    { name: 'Jumper', needed: 11 },
    { name: 'Panel', needed: 12 },
    { name: 'Distro', needed: 2 },
  ];
  expect(compareMaterials(before, after)).toEqual([
    { kind: 'removed', what: 'item', name: 'Breakout', before: count(1), after: null },
    { kind: 'changed', what: 'item', name: 'Jumper', before: count(10), after: count(11) },
    { kind: 'added', what: 'item', name: 'Distro', before: null, after: count(2) },
  ]);
});

test('compareMaterials takes a line of which none is needed as not there', () => {
  expect(compareMaterials([{ name: 'Panel', needed: 0 }], [])).toEqual([]);
  expect(compareMaterials([{ name: 'Panel', needed: 0 }], [{ name: 'Panel', needed: 3 }])).toMatchObject([
    { kind: 'added', after: count(3) },
  ]);
});

test('compareMaterials of two lines of one name finds the one that changed', () => {
  const before = [
    { name: '', needed: 1 },
    { name: '', needed: 2 },
  ];
  expect(compareMaterials(before, [before[1]!, before[0]!])).toEqual([]);
  expect(compareMaterials(before, [{ name: '', needed: 5 }, before[0]!])).toMatchObject([
    { kind: 'changed', before: count(2), after: count(5) },
  ]);
});
