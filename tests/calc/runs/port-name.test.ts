import { expect, test } from 'vitest';
import { breakoutLetter, portName } from '../../../src/calc/runs/port-name';

test('portName runs through the breakouts of a processor', () => {
  expect([0, 9, 10, 13].map((port) => portName(3, port, 10))).toEqual(['3A-01', '3A-10', '3B-01', '3B-04']);
});

test('portName leaves the letter out on a processor with direct ports', () => {
  expect(portName(3, 3, null)).toBe('3-04');
  expect(portName(12, 119, null)).toBe('12-120');
  expect(portName(3, 3, 0)).toBe('3-04');
});

test('breakoutLetter goes on after Z', () => {
  expect([0, 25, 26, 27, 701, 702].map(breakoutLetter)).toEqual(['A', 'Z', 'AA', 'AB', 'ZZ', 'AAA']);
});
