import { expect, test } from 'vitest';
import { wireInWay } from '../../../../src/calc/runs/search/wire-in-way';
import { makeReady } from '../../../../src/calc/runs/search/zone-to-wire';
import { aPort, block } from './block-of-panels';

const runsOf = ({ order, start }: { order: Int32Array; start: Int32Array }) =>
  Array.from(start.subarray(1), (end, run) => [...order.subarray(start[run]!, end)]);

test('wireInWay splits above row 1 into columns, and folds two by two below', () => {
  // Three columns of four, rows 0 and 1 in reach, so that a run enters at the lower end of a column.
  const [wiring] = wireInWay(makeReady(block(3, 4), aPort(6, 'panels', 600)), { kind: 'split', aboveRow: 1, wide: 2 });
  expect(wiring).toMatchObject({ ports: 5, entriesOutOfReach: 0 });
  expect(runsOf(wiring!).sort()).toEqual([[0, 4], [1, 2, 3], [5, 6, 7], [8], [9, 10, 11]].sort());
});

test('wireInWay gives a strand too long for a port in both cuts: full, and even', () => {
  // Two columns of five on ports of four: 4 and 1, or 3 and 2.
  const wirings = wireInWay(makeReady(block(2, 5), aPort(4, 'panels', 10_000)), { kind: 'columns' });
  const lengths = wirings.map((wiring) =>
    runsOf(wiring)
      .map(({ length }) => length)
      .sort(),
  );
  expect(lengths).toEqual([
    [1, 1, 4, 4],
    [2, 2, 3, 3],
  ]);
});

test('wireInWay of a zone that is not its own mirror image begins from the right as well', () => {
  const zone = makeReady(
    block(3, 2, (place) => place !== 1),
    aPort(4, 'panels', 10_000),
  );
  const folded = wireInWay(zone, { kind: 'folded', wide: 2 });
  // From the left 0 | 3 2 and 4 5; from the right 4 5 3 2 | 0: the strands differ, so do the wirings.
  expect(new Set(folded.map((wiring) => JSON.stringify(runsOf(wiring)))).size).toBeGreaterThan(1);
  for (const wiring of folded) expect([...wiring.order].sort()).toEqual([0, 2, 3, 4, 5]);
});
