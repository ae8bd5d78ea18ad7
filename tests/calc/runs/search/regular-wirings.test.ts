import { expect, test } from 'vitest';
import { regularWirings, wireRegularly } from '../../../../src/calc/runs/search/regular-wirings';
import { makeReady } from '../../../../src/calc/runs/search/zone-to-wire';
import { aPort, block } from './block-of-panels';

test('regularWirings of 13 x 13 has the way that a crew knows: single columns from row 5, below folded two by two', () => {
  // common practice, no source: 13 runs of 9, 6 of 8, one of 4.
  const crew = regularWirings(block(13, 13), aPort(10)).filter(
    ({ way }) => way.kind === 'split' && way.aboveRow === 4 && way.wide === 2,
  );
  const counts = crew.map(({ start }) =>
    Array.from(start.subarray(1), (end, run) => end - start[run]!).sort((a, b) => b - a),
  );
  expect(counts).toContainEqual([...Array(13).fill(9), ...Array(6).fill(8), 4]);
});

test('regularWirings leave no panel out and put none on two runs, whatever the way, with a hole', () => {
  const grid = block(5, 6, (place) => place !== 8 && place !== 9);
  const there = Array.from(grid.present.keys()).filter((place) => grid.present[place] === 1);
  const wirings = regularWirings(grid, aPort(5));
  expect(new Set(wirings.map(({ way }) => way.kind))).toEqual(new Set(['columns', 'folded', 'split', 'rows']));
  for (const { order } of wirings) expect([...order].sort((a, b) => a - b)).toEqual(there);
});

test('wireRegularly leaves out ways that ports there do not suffice for, where another fits, and none where none does', () => {
  const zone = makeReady(block(13, 13), aPort(10));
  const all = wireRegularly(zone);
  const fitting = wireRegularly(zone, 20);
  expect(fitting.length).toBeLessThan(all.length);
  // Of single columns each takes two ports: 26.
  expect(all.some(({ way }) => way.kind === 'columns')).toBe(true);
  expect(fitting.some(({ way }) => way.kind === 'columns')).toBe(false);
  const figures = (wirings: typeof all) => wirings.map(({ way, ports, cableMm }) => ({ way, ports, cableMm }));
  const kept = all.filter(({ ports, entriesOutOfReach }) => ports <= 20 && entriesOutOfReach === 0);
  expect(figures(fitting)).toEqual(expect.arrayContaining(figures(kept)));
  // 10 ports suffice for nothing; and with entries in the lowest row alone, 13 for 17 runs, no way keeps reach.
  expect(figures(wireRegularly(zone, 10))).toEqual(figures(all));
  const low = makeReady(block(13, 13), aPort(10, 'panels', 100));
  expect(figures(wireRegularly(low, 20))).toEqual(figures(wireRegularly(low)));
});
