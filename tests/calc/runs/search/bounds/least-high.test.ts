import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mostOnARun } from '../../../../../src/calc/runs/search/bounds/least-chains';
import { leastHigh } from '../../../../../src/calc/runs/search/bounds/least-high';
import { makeReady } from '../../../../../src/calc/runs/search/zone-to-wire';
import { aPort, block } from '../block-of-panels';
import { leastByTrying } from '../least-by-trying';
import { smallZone } from '../small-zones';

const of = (...args: Parameters<typeof makeReady>) => {
  const { region } = makeReady(...args);
  return leastHigh(region, mostOnARun(region));
};

test('leastHigh of a wall of ten rows with a door as high as reach: what cannot come past is on a run of its own', () => {
  // 12 columns, eight panels a port, rows 0 to 3 in reach, two columns without them: 72 panels stand above, and ten columns
  // lead up, each with seven of them at the most, for one is spent on the way. 70 are fewer than 72.
  const isThere = (place: number) => !([7, 8].includes(Math.floor(place / 10)) && place % 10 < 4);
  expect(of(block(12, 10, isThere), aPort(8, 'panels', 1600))).toBe(1);
  // A door of three rows leaves twelve columns.
  expect(
    of(
      block(12, 10, (place) => isThere(place) || place % 10 === 3),
      aPort(8, 'panels', 1600),
    ),
  ).toBe(0);
});

test('leastHigh of a zone that is all above reach is its fewest runs', () => {
  expect(of(block(5, 4), aPort(6, 'panels', -1))).toBe(4);
});

test('leastHigh is never above what trying all finds', () => {
  fc.assert(
    fc.property(smallZone, ({ grid, limits, region }) => {
      fc.pre(region.size > 0);
      expect(leastHigh(region, mostOnARun(region))).toBeLessThanOrEqual(leastByTrying(grid, limits).high);
    }),
    { numRuns: 60 },
  );
});

test('leastHigh: one panel that leads on lets one run through, whatever leads to it or from it', () => {
  // '#' is a panel; only the lowest row is in reach, five panels a port.
  const of5 = (...lines: string[]) => {
    const rows = lines.length;
    const there = (place: number) => lines[rows - 1 - (place % rows)]![Math.floor(place / rows)] === '#';
    return of(block(lines[0]!.length, rows, there), aPort(5, 'panels', 100));
  };
  // Six panels over a hole, to which two ways lead with two panels each: the one run that turns in brings three of them.
  expect(of5(' # ', ' # ', ' # ', ' # ', ' # ', '###', '# #', '###')).toBe(1);
  // Three arms of two panels behind one panel, which is behind one more: one run comes through, with two panels left.
  expect(of5('  #  ', '  #  ', '#####', '  #  ', '#####')).toBe(1);
});
