import { expect, test } from 'vitest';
import { measureRuns } from '../../../../src/calc/runs/search/measure-runs';
import { aPort, block } from './block-of-panels';

/** Runs on 2 columns of 3 panels: places 0 1 2 (column 0, from the floor up) and 3 4 5. */
const measure = (runs: readonly (readonly number[])[], reachMm: number, lastObeysReach = false) => {
  const start = [0];
  for (const run of runs) start.push(start.at(-1)! + run.length);
  const pixels = Float64Array.from(runs, ({ length }) => length * 216 * 216);
  const list = { order: Int32Array.from(runs.flat()), start: Int32Array.from(start), pixels, ports: runs.length };
  return measureRuns(block(2, 3), { ...aPort(4, 'panels', reachMm), lastObeysReach, returns: lastObeysReach }, list, 0);
};

test('measureRuns counts ports, panels, pixels and figures', () => {
  expect(
    measure(
      [
        [0, 1, 2],
        [3, 4, 5],
      ],
      100,
    ),
  ).toMatchObject({
    ports: 2,
    fewestPanels: 3,
    mostPanels: 3,
    fullestPixels: 3 * 216 * 216,
    fullestShare: 3 / 4,
    figures: 1,
    entriesOutOfReach: 0,
    highestEntryMm: 0,
  });
  // Up two; up one and across; a panel by itself: three figures.
  expect(measure([[0, 1, 2], [3], [4, 5]], 100)).toMatchObject({ ports: 3, fewestPanels: 1, figures: 3 });
});

test('measureRuns counts entries above reach, with returns last panels too, a run of one panel once', () => {
  // Rows stand 0, 500 and 1000 mm above the floor.
  expect(measure([[2, 1, 0], [3, 4], [5]], 600).entriesOutOfReach).toBe(2);
  expect(measure([[2, 1, 0], [3, 4], [5]], 600, true).entriesOutOfReach).toBe(2);
  expect(measure([[0, 1, 2], [3, 4], [5]], 400, true)).toMatchObject({ entriesOutOfReach: 3, highestEntryMm: 1000 });
});

test('measureRuns has the codes of figures in ascending order, the same for the same figures', () => {
  const { figureCodes } = measure([[0, 3, 4], [1], [2, 5]], 100);
  expect([...figureCodes].sort((a, b) => a - b)).toEqual(figureCodes);
  expect(
    measure(
      [
        [3, 4, 5],
        [0, 1, 2],
      ],
      100,
    ).figureCodes,
  ).toEqual(
    measure(
      [
        [0, 1, 2],
        [3, 4, 5],
      ],
      100,
    ).figureCodes,
  );
});

test('measureRuns of no run is all nothing', () => {
  expect(measure([], 100)).toMatchObject({
    ports: 0,
    fewestPanels: 0,
    mostPanels: 0,
    figures: 0,
    highestEntryMm: null,
  });
});

test('measureRuns adds up cable: jumpers and the way home of every entry, with returns of last panels too', () => {
  const runs = [
    [0, 1, 2],
    [3, 4, 5],
  ];
  // Each entry half a column from the middle of two, on the lowest row; two jumpers up.
  expect(measure(runs, 9000).cableMm).toBe(2 * (250 + 1000));
  expect(measure(runs, 9000, true).cableMm).toBe(2 * (250 + 1000) + 2 * (250 + 1000));
});
