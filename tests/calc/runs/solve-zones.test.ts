import { expect, test } from 'vitest';
import { chooseRegular, solveZones } from '../../../src/calc/runs/solve-zones';
import type { RunLimits, WiringGrid } from '../../../src/calc/runs/wiring-grid';

/** A block of panels of 216 x 216 pixels and 0.5 m, standing on the floor. */
function block(columns: number, rows: number): WiringGrid {
  const size = columns * rows;
  const each = (figure: (column: number, row: number) => number) =>
    Array.from({ length: size }, (_, place) => figure(Math.floor(place / rows), place % rows));
  return {
    columns,
    rows,
    present: new Uint8Array(size).fill(1),
    pixelLeft: Uint32Array.from(each((column) => column * 216)),
    pixelTop: Uint32Array.from(each((_, row) => (rows - 1 - row) * 216)),
    pixelWidth: new Uint32Array(size).fill(216),
    pixelHeight: new Uint32Array(size).fill(216),
    entryHeightMm: Float64Array.from(each((_, row) => row * 500)),
    columnPitchMm: 500,
    rowPitchMm: 500,
  };
}

// Row 5 stands at 2.00 m, row 6 at 2.50 m.
const tenAPort: RunLimits = { usablePixels: 10 * 216 * 216, panelsMost: 1000, counting: 'panels', reachMm: 2100 };
const twoBreakouts = { portsThere: 20, portsABreakout: 10 };

test('chooseRegular for 13 x 13 panels, ten a port, finds a way of at most 20 ports with every entry in reach', () => {
  // common practice, no source: single columns up from row 5 and columns folded two by two below take 20 ports.
  const { chosen, ways, least } = chooseRegular(block(13, 13), tenAPort, { priority: 'repeats', ...twoBreakouts });
  expect(chosen.entriesOutOfReach).toBe(0);
  expect(chosen.ports).toBeLessThanOrEqual(20);
  // 169 panels over 10 a port.
  expect(least).toBe(17);
  const crew = ways.filter(({ way }) => way.kind === 'split' && way.aboveRow === 4 && way.wide === 2);
  const counts = crew.map(({ start }) =>
    Array.from(start.subarray(1), (end, i) => end - start[i]!).sort((a, b) => a - b),
  );
  expect(counts).toContainEqual([4, ...Array(6).fill(8), ...Array(13).fill(9)]);
});

test('chooseRegular with fewest ports first reaches 17 for the same block, the least possible', () => {
  // common practice, no source: 18 by a regular way is known, 169 panels over 10 a port cannot take fewer than 17.
  const { chosen } = chooseRegular(block(13, 13), tenAPort, { priority: 'fewest-ports', ...twoBreakouts });
  expect(chosen.entriesOutOfReach).toBe(0);
  expect(chosen.ports).toBe(17);
});

test.each(['repeats', 'fewest-ports', 'most-free', 'shortest-cable'] as const)(
  'chooseRegular with %s first leaves no panel out and puts none on two runs',
  (priority) => {
    const { chosen } = chooseRegular(block(5, 7), tenAPort, { priority, ...twoBreakouts });
    expect([...chosen.order].sort((a, b) => a - b)).toEqual(Array.from({ length: 35 }, (_, i) => i));
    expect(Math.max(...chosen.pixels)).toBeLessThanOrEqual(tenAPort.usablePixels);
  },
);

test('solveZones wires a zone of the same shape once', () => {
  const solve = solveZones();
  const terms = { priority: 'repeats' as const, ...twoBreakouts };
  expect(solve(block(4, 4), tenAPort, terms)).toBe(solve(block(4, 4), tenAPort, terms));
});
