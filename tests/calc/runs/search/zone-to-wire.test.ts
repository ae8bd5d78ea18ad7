import { expect, test } from 'vitest';
import { makeReady } from '../../../../src/calc/runs/search/zone-to-wire';
import { aPort, block } from './block-of-panels';

test('makeReady keeps panels that no port takes apart from those that share ports', () => {
  const grid = block(2, 3, (place) => place !== 2);
  grid.pixelWidth[4] = 4320;
  const zone = makeReady(grid, aPort(4));
  expect([[...zone.tooLarge], [...zone.region.places]]).toEqual([[4], [0, 1, 3, 5]]);
  expect([...zone.cellAt]).toEqual([0, 1, -1, 2, -1, 3]);
});

test('makeReady counts the panels of one run, by pixels and by count', () => {
  expect(makeReady(block(3, 4), aPort(5)).panelsAtMost).toBe(5);
  expect(makeReady(block(3, 4), { ...aPort(5), panelsMost: 3 }).panelsAtMost).toBe(3);
  expect(makeReady(block(1, 2), aPort(5)).panelsAtMost).toBe(2);
  expect(makeReady(block(3, 4), { ...aPort(5), panelsMost: 0 })).toMatchObject({
    panelsAtMost: 0,
    region: { size: 0 },
  });
});

test('makeReady brings a port down to what whole panels fill of it, so that a little more changes nothing', () => {
  const usable = (usablePixels: number) => makeReady(block(3, 4), { ...aPort(5), usablePixels }).region.limits;
  expect(usable(480_000)).toEqual(usable(466_560));
  expect(usable(480_000).usablePixels).toBe(466_560);
});

test('makeReady sees what is its own mirror image, and its lowest row', () => {
  expect(makeReady(block(3, 4), aPort(5)).symmetric).toBe(true);
  expect(
    makeReady(
      block(3, 4, (place) => place % 4 > 0 && place !== 1),
      aPort(5),
    ),
  ).toMatchObject({
    symmetric: false,
    lowestRow: 1,
  });
});
