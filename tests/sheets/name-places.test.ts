import { expect, test } from 'vitest';
import type { Place } from '../../src/calc/chapter';
import { namePlaces } from '../../src/sheets/name-places';

const ports = (count: number): Place[] =>
  Array.from({ length: count }, (_, i) => ({ kind: 'port', name: `1-0${i + 1}` }));

test('namePlaces names six places and counts the rest', () => {
  expect(namePlaces(ports(2))).toBe('1-01, 1-02');
  expect(namePlaces(ports(6))).toBe('1-01, 1-02, 1-03, 1-04, 1-05, 1-06');
  expect(namePlaces(ports(8))).toBe('1-01, 1-02, 1-03, 1-04, 1-05, 1-06, and 2 more');
  expect(namePlaces([])).toBe('');
});

test('namePlaces names a field of the file only where no thing is named', () => {
  const field: Place = { kind: 'field', name: 'wish.budget' };
  expect(namePlaces([field, ...ports(1)])).toBe('1-01');
  expect(namePlaces([field])).toBe('wish.budget');
});
