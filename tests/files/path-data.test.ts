import { expect, test } from 'vitest';
import { pathData } from '../../src/files/path-data';

test('pathData begins each polyline anew, closes closed ones and writes no more than micrometres', () => {
  const xyMm = Float64Array.of(0, 0, 10.00049, 0, 10, 5.5, -1, -0.0001, 2, 2);
  const ends = Uint32Array.of(3, 5);
  expect(pathData({ xyMm, ends, closed: false })).toBe('M0 0L10 0L10 5.5M-1 0L2 2');
  expect(pathData({ xyMm, ends, closed: true })).toBe('M0 0L10 0L10 5.5ZM-1 0L2 2Z');
  expect(pathData({ xyMm: new Float64Array(), ends: new Uint32Array(), closed: true })).toBe('');
});
