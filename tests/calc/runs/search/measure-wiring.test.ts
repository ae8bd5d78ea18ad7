import { expect, test } from 'vitest';
import { measureWiring } from '../../../../src/calc/runs/search/measure-wiring';
import { aPort, block } from './block-of-panels';

test('measureWiring puts runs in the order of their entries and counts the pixels of each', () => {
  // Two columns of three; a run down the right one from the top, and one up the left one, cut after two.
  const runs = { order: Int32Array.from([5, 4, 3, 0, 1, 2]), start: Int32Array.from([0, 3, 5, 6]) };
  const none = new Int32Array(0);
  const wiring = measureWiring(block(2, 3), aPort(4, 'panels', 600), { kind: 'free' }, runs, none);
  expect([...wiring.order]).toEqual([0, 1, 2, 5, 4, 3]);
  expect([...wiring.start]).toEqual([0, 2, 3, 6]);
  expect([...wiring.pixels]).toEqual([2, 1, 3].map((panels) => panels * 216 * 216));
  // Rows 0 and 1 are in reach: entries at rows 0, 2 and 2.
  expect(wiring).toMatchObject({
    ports: 3,
    entriesOutOfReach: 2,
    fewestPanels: 1,
    mostPanels: 3,
    highestEntryMm: 1000,
  });
  expect(wiring).toMatchObject({ fullestShare: 3 / 4, figures: 3, way: { kind: 'free' }, tooLarge: none });
});
