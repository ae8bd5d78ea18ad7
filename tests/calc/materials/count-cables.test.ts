import { expect, test } from 'vitest';
import { countCables } from '../../../src/calc/materials/count-cables';
import { cableItem, noNetwork } from '../../arbitraries/materials-inputs';

const wiring = {
  runs: 12,
  returns: 0,
  panelsOnRuns: 98,
  circuits: 10,
  panelsOnCircuits: 100,
  breakouts: 2,
  video: 3,
  network: noNetwork,
};
const counted = (cables: Parameters<typeof countCables>[0]) =>
  Object.fromEntries(countCables(cables, wiring).map((item) => [item.itemId, item.needed]));

test('countCables: one home run a run, a jumper between neighbours, one trunk a breakout, one link a zone', () => {
  expect(counted([])).toEqual({
    'home-run': 12,
    'data-jumper': 86, // 98 panels on 12 runs
    trunk: 2,
    video: 3,
    circuit: 10,
    'power-jumper': 90,
  });
});

test('countCables takes the first cable of a kind, and none of another', () => {
  const cables = [cableItem('long', 'circuit', 90), cableItem('short', 'circuit', 50), cableItem('t', 'trunk', null)];
  const items = countCables(cables, wiring);
  expect(items.find((item) => item.itemId === 'long')).toMatchObject({ needed: 10, priceEach: 90, massKgEach: 0.5 });
  expect(items.some((item) => item.itemId === 'short')).toBe(false);
  expect(items.find((item) => item.itemId === 't')).toMatchObject({ needed: 2, priceEach: null });
});

test('countCables counts a cable for every return beside that of its run', () => {
  const back = countCables([], { ...wiring, returns: 12 }).find(({ itemId }) => itemId === 'home-run');
  expect(back).toMatchObject({ needed: 24, countedAs: 'one a run and one a return' });
});
