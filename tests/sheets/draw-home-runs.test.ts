import { describe, expect, it } from 'vitest';
import { drawHomeRuns, type HomeRunEntry } from '../../src/sheets/draw-home-runs';
import { flatGrid, polylines } from './polylines';

const grid = flatGrid({ columns: 3, rows: 4 });
// Rows of 500 mm from y 1000 down to the foot at 3000; the line of a chain passes at 0.62 of a panel's width.
const low: HomeRunEntry = {
  xMm: 810,
  yMm: 2750,
  strip: 0,
  column: 2,
  row: 1,
  tag: '1B-02',
  shortTag: 'B-02',
  number: 11,
};
const high: HomeRunEntry = { ...low, yMm: 1750, row: 3, tag: '1A-02', shortTag: 'A-02', number: 1 };

describe('drawHomeRuns', () => {
  it('comes from outside the foot, runs up a lane and across to the entry', () => {
    const [line] = polylines(drawHomeRuns(grid, [low], 'bottom').stroke.lines);
    const [start, corner, end] = line!;
    expect(start![1]).toBeGreaterThan(3000);
    expect(start![0]).toBe(corner![0]);
    expect(corner![1]).toBe(2750);
    expect(end).toEqual([810, 2750]);
    expect(start![0]).toBeGreaterThan(500);
    expect(start![0]).toBeLessThan(810);
  });
  it('gives two entries of one column lanes of their own, the higher one the outer, so that no branch crosses a cable', () => {
    const lines = polylines(drawHomeRuns(grid, [low, high], 'bottom').stroke.lines);
    const toHigh = lines.find((line) => line.at(-1)![1] === 1750)!;
    const toLow = lines.find((line) => line.at(-1)![1] === 2750)!;
    expect(toHigh[0]![0]!).toBeLessThan(toLow[0]![0]!);
  });
  it('sets the tags of one column on rows of their own', () => {
    const { tags } = drawHomeRuns(grid, [low, high], 'bottom');
    expect(tags.map((row) => row.at(0).text)).toEqual(['1A-02', '1B-02']);
    expect(tags[1]!.at(0).yMm).toBeGreaterThan(tags[0]!.at(0).yMm);
    expect(tags[1]!.numberOf!(0)).toBe(11);
  });
  it('keeps the tags of however many entries in the space beside the surface, each cable in a lane of its own', () => {
    for (const count of [1, 3, 6, 20]) {
      const entries = Array.from({ length: count }, (_, k) => ({
        ...low,
        yMm: 2990 - (1900 * k) / count,
        number: k + 1,
      }));
      const lines = polylines(drawHomeRuns(grid, entries, 'bottom').stroke.lines);
      const starts = lines.map((line) => line[0]!);
      expect(Math.max(...starts.map(([, yMm]) => yMm!))).toBeLessThanOrEqual(3000 + grid.belowMm);
      expect(new Set(starts.map(([xMm]) => Math.round(xMm! * 10))).size).toBe(count);
      expect(Math.max(...starts.map(([xMm]) => xMm!))).toBeLessThan(810);
    }
  });
  it.each([
    ['top', (x: number, y: number) => y < 1000 && x > 500 && x < 1000],
    ['left', (x: number, y: number) => x < 0 && y > 2500 && y < 3000],
    ['right', (x: number, y: number) => x > 1500 && y > 2500 && y < 3000],
  ] as const)('can come from the %s', (side, isOutside) => {
    const [line] = polylines(drawHomeRuns(grid, [low], side).stroke.lines);
    expect(isOutside(line![0]![0]!, line![0]![1]!)).toBe(true);
    expect(line!.at(-1)).toEqual([810, 2750]);
  });
  it('lets no cable from the side pass through the tag of another: lines farther out lie under the tags that they pass', () => {
    const entries = [0, 1, 2, 3].map((k) => ({ ...low, xMm: 310 + 250 * k, number: k + 1 }));
    for (const side of ['left', 'right'] as const) {
      const { tags, stroke } = drawHomeRuns(grid, entries, side);
      const labels = tags.map((row) => row.at(0));
      expect(labels.map(({ asideY }) => asideY)).toEqual([-1, -1, -1, 0]);
      const lanes = polylines(stroke.lines).map((line) => line[0]![1]!);
      expect(lanes).toEqual(labels.map(({ yMm }) => yMm));
      expect(lanes).toEqual([...lanes].sort((a, b) => a - b));
      // Between the panel's name and the line of its run, which is in the middle of the panel.
      expect(lanes.every((yMm) => yMm > 2500 && yMm < 2750)).toBe(true);
    }
  });
  it('comes from the floor where a wall stands above it', () => {
    const raised = flatGrid({ columns: 3, rows: 4, baseMm: 800 });
    const [line] = polylines(drawHomeRuns(raised, [low], 'bottom').stroke.lines);
    expect(line![0]![1]).toBeGreaterThan(3800);
  });
});
