import { expect, test } from 'vitest';
import { holdProcessors } from '../../../src/calc/names/hold-processors';
import type { LocatedChain, LocatedNames } from '../../../src/calc/names/locate-names';
import { plainRuns } from '../runs/plain-runs';
import { plainSurface, plainType } from '../zones/plain-surface';

/** A wall of columns of three panels, twenty of them on a processor, each a run. */
const stage = (columns: number) =>
  plainRuns({ wall: plainSurface({ columns, bands: [{ type: plainType(216), rows: 3 }] }) });
const ports = (processor: number, columns: readonly number[]): LocatedChain[] =>
  columns.map((column, i) => {
    const first = 3 * (column - 1);
    return { name: `${processor}A-${`${i + 1}`.padStart(2, '0')}`, first, last: first + 2, returnName: null };
  });
const through = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, i) => from + i);
const numbers = (columns: number, held: Partial<LocatedNames>) => {
  const { zones, surfaces } = stage(columns);
  const names = { processors: [], ports: [], circuits: [], ...held };
  return holdProcessors(zones, names, surfaces).zones.map(({ processor }) => processor);
};

test('holdProcessors without held names numbers zones as they stand', () => {
  const { zones, surfaces } = stage(60);
  expect(holdProcessors(zones, { processors: [], ports: [], circuits: [] }, surfaces)).toEqual(zones);
  expect(numbers(60, {})).toEqual([1, 2, 3]);
});

test('holdProcessors gives a zone the number of the processor to which most of its ports belong', () => {
  // Three zones of twenty columns; a column was taken away on the left, so that every zone reaches one column further, to
  // where the next processor began. The corner of processor 1 is gone, those of 2 and 3 are in the zones before theirs.
  const held = [...ports(1, through(1, 19)), ...ports(2, through(20, 39)), ...ports(3, through(40, 59))];
  const corners = [
    { number: 1, at: -1 },
    { number: 2, at: 3 * 19 },
    { number: 3, at: 3 * 39 },
  ];
  expect(numbers(60, { ports: held, processors: corners })).toEqual([1, 2, 3]);
});

test('holdProcessors goes by the corner of a zone where no port says more', () => {
  const corners = [
    { number: 4, at: 0 },
    { number: 9, at: 3 * 40 },
  ];
  expect(numbers(60, { processors: corners })).toEqual([4, 10, 9]);
});

test('holdProcessors gives a new zone a number that was never held', () => {
  // Processor 5 drives nothing now, and its number stays its own.
  const held = [...ports(1, through(21, 40)), ...ports(5, [])];
  expect(numbers(60, { ports: held, processors: [{ number: 5, at: -1 }] })).toEqual([6, 1, 7]);
});

test('holdProcessors passes over what is no name of a port', () => {
  const strange = { name: 'D1-1', first: 0, last: 2, returnName: null };
  expect(numbers(20, { ports: [strange] })).toEqual([1]);
});
