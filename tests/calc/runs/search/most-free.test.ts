import { expect, test } from 'vitest';
import { searchMostFree } from '../../../../src/calc/runs/search/most-free';
import { wireRegularly } from '../../../../src/calc/runs/search/regular-wirings';
import { makeReady } from '../../../../src/calc/runs/search/zone-to-wire';
import { aPort, block } from './block-of-panels';

test('searchMostFree of 7 x 3 panels on four ports of seven: the fullest has six, for four times five are 20', () => {
  const zone = makeReady(block(7, 3), aPort(7, 'panels', 10_000));
  const full = wireRegularly(zone).find(({ way }) => way.kind === 'rows')!;
  const found = searchMostFree(zone, full, 4, 300_000);
  const emptiest = Math.min(full.fullestPixels, ...found.map(({ fullestPixels }) => fullestPixels));
  expect(emptiest).toBe(6 * 216 * 216);
  for (const { ports, entriesOutOfReach } of found) expect([ports <= 4, entriesOutOfReach]).toEqual([true, 0]);
});

test('searchMostFree finds nothing emptier than one panel a port, or beside a panel that is too large', () => {
  const singles = makeReady(block(3, 1), aPort(1));
  expect(searchMostFree(singles, wireRegularly(singles)[0]!, 3, 10_000)).toEqual([]);
  const grid = block(3, 1);
  grid.pixelWidth[0] = 5000;
  const zone = makeReady(grid, aPort(2));
  expect(searchMostFree(zone, wireRegularly(zone)[0]!, 3, 10_000)).toEqual([]);
});
