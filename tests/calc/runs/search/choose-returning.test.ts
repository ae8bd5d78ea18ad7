import { expect, test } from 'vitest';
import { chooseReturning } from '../../../../src/calc/runs/search/choose-returning';
import { chooseWiring } from '../../../../src/calc/runs/search/choose-wiring';
import { aPort, block } from './block-of-panels';

const terms = { priority: 'repeats' as const, portsThere: 20 };
const lastRows = (rows: number, { order, start }: { order: Int32Array; start: Int32Array }) =>
  Array.from({ length: start.length - 1 }, (_, run) => order[start[run + 1]! - 1]! % rows);

test('chooseReturning without returns is chooseWiring', () => {
  const grid = block(5, 8);
  const { chosen, least } = chooseReturning(grid, aPort(8), terms);
  const expected = chooseWiring(grid, aPort(8), terms);
  expect([chosen.order, chosen.start, least]).toEqual([expected.chosen.order, expected.chosen.start, expected.least]);
});

test('chooseReturning lets both ends of every run come within reach where that can be', () => {
  // 6 columns of 6 panels, 12 to a port, reach up to row 5: two columns folded go up and come down again.
  const { chosen } = chooseReturning(block(6, 6), { ...aPort(12), returns: true }, terms);
  expect(chosen.entriesOutOfReach).toBe(0);
  // 2100 mm is above the lower edge of row 5 (2000 mm), the fifth from the floor.
  expect(Math.max(...lastRows(6, chosen))).toBeLessThanOrEqual(4);
});

test('chooseReturning asks reach of the entries alone where no wiring can bring every return down', () => {
  // 13 rows, 9 to a port: columns go up from row 5: the eight rows above reach hold more ends than the rows below can take.
  const grid = block(4, 13);
  const { chosen } = chooseReturning(grid, { ...aPort(9), returns: true }, terms);
  expect(chosen.entriesOutOfReach).toBe(0);
  expect(Math.max(...lastRows(13, chosen))).toBeGreaterThan(4);
  const alone = chooseWiring(grid, aPort(9), terms).chosen;
  expect([chosen.ports, chosen.figures]).toEqual([alone.ports, alone.figures]);
  // The way home of every last panel counts as cable.
  expect(chosen.cableMm).toBeGreaterThan(alone.cableMm);
});

test('chooseReturning takes no wiring whose returns drop from above reach, though no bound rules one out', () => {
  // Five panels in reach and one on top of the first, which has but that neighbour: it is an end of its run, and high.
  const tooth = block(5, 2, (place) => place % 2 === 0 || place === 1);
  const limits = { ...aPort(8, 'panels', 400), returns: true };
  const both = chooseWiring(tooth, { ...limits, lastObeysReach: true }, terms).chosen;
  expect(both.entriesOutOfReach).toBe(1);
  const { chosen } = chooseReturning(tooth, limits, terms);
  expect(chosen.entriesOutOfReach).toBe(0);
  const entries = Array.from(chosen.start.subarray(0, -1), (at) => chosen.order[at]!);
  expect(entries).not.toContain(1);
});

test('chooseReturning brings returns within reach only on the ports there are', () => {
  // Four panels in reach, two on top of the middle ones, four to a port: up, over and down again leaves a port for each side;
  // with returns from above two runs of three do.
  const grid = block(4, 2, (place) => place !== 1 && place !== 7);
  const limits = { ...aPort(4, 'panels', 400), returns: true };
  const lastOf = (portsThere: number) => {
    const { chosen } = chooseReturning(grid, limits, { priority: 'fewest-ports', portsThere });
    expect(chosen.entriesOutOfReach).toBe(0);
    return [chosen.ports, lastRows(2, chosen).includes(1)];
  };
  expect(lastOf(3)).toEqual([3, false]);
  expect(lastOf(2)).toEqual([2, true]);
});
