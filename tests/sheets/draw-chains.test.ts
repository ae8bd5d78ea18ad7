import { describe, expect, it } from 'vitest';
import { dataChains } from '../../src/sheets/chains';
import { drawChains } from '../../src/sheets/draw-chains';
import { layOutUnrolled } from '../../src/sheets/unrolled-grid';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { lengthOf, polylines } from './polylines';

/** Two columns of four rows: above row 2 a run each, below one run down column 1 and up column 2. */
const parts = stageFixture({ columns: 2, rows: 4, jointDeg: 0, splitAboveRow: 2 });
const table = parts.surfaces.surfaces[0]!;
const spaces = { aboveMm: 1000, belowMm: 1000 };
const grid = layOutUnrolled(table, 'inside', [{ firstColumn: 1, columns: 2 }], spaces);
const drawn = drawChains(grid, 0, dataChains(parts), 'bottom');
const [through, outlines, homeRuns] = drawn.strokes;

describe('drawChains', () => {
  it('draws the edges between runs heavy: one level line, and the upright one above it', () => {
    // Between the rows 2 and 3 across both columns, and between the columns in rows 3 and 4.
    expect(outlines!.weight).toBe('heavy');
    expect(polylines(outlines!.lines)).toHaveLength(2);
    expect(lengthOf(outlines!.lines)).toBe(1000 + 1000);
  });
  it('draws one thin line through each run, from its entry on', () => {
    const lines = polylines(through!.lines);
    expect(lines).toHaveLength(3);
    // Rows of 500 mm from y 1000 down; the folded run enters in row 2 of column 1.
    expect(lines.at(-1)).toEqual([
      [310, 2250],
      [310, 2750],
      [810, 2750],
      [810, 2250],
    ]);
  });
  it('marks every entry and, midway, one arrow for each run of more than one panel', () => {
    const [arrows, squares] = drawn.marks;
    expect(polylines(arrows!.lines)).toHaveLength(3);
    expect(polylines(squares!.lines)).toHaveLength(3);
    // The folded run's third panel of four is the one it has come to: row 1 of column 2, the tip to the right.
    const tip = polylines(arrows!.lines).at(-1)![0]!;
    expect(tip[0]).toBeGreaterThan(810);
    expect(tip[1]).toBe(2750);
  });
  it('brings a tagged home run to every entry', () => {
    expect(polylines(homeRuns!.lines)).toHaveLength(3);
    const tags = drawn.labels
      .slice(0, -1)
      .flatMap((row) => Array.from({ length: row.count }, (_, i) => row.at(i).text));
    expect(tags.sort()).toEqual(['1A-01', '1A-02', '1A-03']);
  });
  it('numbers every panel by its place', () => {
    const numbers = drawn.labels.at(-1)!;
    expect(numbers.count).toBe(8);
    // Column 2, row 2: the last of the folded run.
    expect(numbers.at(table.at[1 * 4 + 1]!).text).toBe('4');
  });
  it('does not join across the paper what lies on two strips', () => {
    const strips = [
      { firstColumn: 1, columns: 1 },
      { firstColumn: 2, columns: 1 },
    ];
    const cut = drawChains(layOutUnrolled(table, 'inside', strips, spaces), 0, dataChains(parts), 'bottom');
    expect(polylines(cut.strokes[0]!.lines)).toHaveLength(4);
    expect(lengthOf(cut.strokes[0]!.lines)).toBe(4 * 500);
  });
  it('draws no runs of other surfaces', () => {
    const chains = dataChains(parts);
    const elsewhere = { ...chains, list: chains.list.map((chain) => ({ ...chain, surfaceId: 'elsewhere' })) };
    expect(drawChains(grid, 0, elsewhere, 'bottom').strokes[0]!.lines.ends).toHaveLength(0);
  });
});
