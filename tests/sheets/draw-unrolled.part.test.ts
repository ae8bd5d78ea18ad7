import { expect, test } from 'vitest';
import { drawUnrolled, type UnrolledOptions } from '../../src/sheets/draw-unrolled';
import type { Drawing, LabelSeries } from '../../src/sheets/drawing';
import { groundMm, type LatticePart } from '../../src/sheets/unrolled-grid';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { lengthOf, polylines } from './polylines';

const format = (mm: number) => `${Math.round(mm)} mm`;
const parts = stageFixture({ columns: 6, rows: 6, jointDeg: 2, zoneColumns: 3, baseMm: 200, splitAboveRow: 3 });
const options: UnrolledOptions = {
  surfaceId: 'wall-a',
  from: 'behind',
  tint: 'processor',
  strips: { count: 1, aboveMm: 1000, belowMm: 1000 },
};
const draw = (part: LatticePart, change: Partial<UnrolledOptions> = {}) =>
  drawUnrolled(parts, { ...options, ...change, part }, format)!;
const textsOf = (series: readonly LabelSeries[], matching: RegExp) =>
  series.flatMap(({ count, at }) =>
    Array.from({ length: count }, (_, i) => at(i).text).filter((text) => matching.test(text)),
  );
const namesIn = ({ labels }: Drawing) => textsOf(labels, /^C\d+ R\d+$/);

/** Two columns and two rows from the middle of the wall. */
const middle: LatticePart = { firstColumn: 3, columns: 2, firstRow: 3, rows: 2 };
/** The lower half of the first zone. */
const foot: LatticePart = { firstColumn: 1, columns: 3, firstRow: 1, rows: 3 };

test('drawUnrolled of a part names the panels in it and no other', () => {
  expect(namesIn(draw(middle).drawing)).toEqual(['C3 R3', 'C3 R4', 'C4 R3', 'C4 R4']);
});

test('drawUnrolled of a part names its columns and rows as the surface counts them', () => {
  const { labels } = draw(middle).drawing;
  expect(textsOf(labels, /^C\d+$/)).toEqual(['C3', 'C4']);
  expect(textsOf(labels, /^R\d+$/)).toEqual(['R3', 'R4']);
});

test('drawUnrolled of a part is as wide and as high as the part, with room for letters', () => {
  const { grid, drawing } = draw(middle);
  // From behind: column 4 left of column 3, 1000 wide; rows 3 and 4 from 1000 down to 2000, no floor under them.
  expect(grid.strips).toMatchObject([{ topMm: 1000, footMm: 2000, widthMm: 1000 }]);
  expect(groundMm(grid, grid.strips[0]!)).toBe(2000);
  expect(drawing.box.bottomMm).toBe(3000);
  expect(drawing.dimensions.map(({ text }) => text)).toEqual(['1000 mm']);
  expect(drawing.title).toBe('A Wall unrolled: C3 to C4, R3 to R4');
});

test('drawUnrolled of a part draws the edge of the surface only where the surface ends', () => {
  const edge = ({ drawing }: ReturnType<typeof draw>) =>
    lengthOf(drawing.strokes.find(({ layer }) => layer === 'wall')!.lines);
  expect(edge(draw(middle))).toBe(0);
  // Its left side, three rows of 500, and its foot, three columns of 500.
  expect(edge(draw(foot))).toBe(3000);
});

test('drawUnrolled of a part shows floor and reach where they lie in it', () => {
  const lines = (part: LatticePart, layer: string) =>
    polylines(draw(part).drawing.strokes.find((stroke) => stroke.layer === layer)!.lines).length;
  // The reach of 2.1 m crosses row 4 (1.7 to 2.2 m); the floor lies 0.2 m under row 1.
  expect([lines(foot, 'hall'), lines(foot, 'limits')]).toEqual([1, 0]);
  expect([lines(middle, 'hall'), lines(middle, 'limits')]).toEqual([0, 1]);
});

test('drawUnrolled of a part tags the runs that begin in it, and draws no line of others', () => {
  const tags = (part: LatticePart) => textsOf(draw(part).drawing.labels, /^\d[A-Z]-\d+$/).sort();
  // Three runs up from row 4 on, two folded below: one begins at C1 R3, one at C3.
  const mine = parts.runs.runs.filter(({ start, zone }) => {
    const local = parts.runs.order[start]!;
    return zone === 0 && parts.surfaces.surfaces[0]!.row[local]! <= 3;
  });
  expect(tags(foot)).toEqual(mine.map(({ port }) => port).sort());
  const through = draw(foot).drawing.strokes.find(({ layer, weight }) => layer === 'runs' && weight === 'fine')!;
  for (const [x, y] of polylines(through.lines).flat()) {
    expect(x).toBeLessThan(1500);
    expect(y).toBeGreaterThan(1000);
  }
});

test('drawUnrolled of all of a surface as a part differs from that of the surface in its title alone', () => {
  const whole = drawUnrolled(parts, options, format)!.drawing;
  const part = draw({ firstColumn: 1, columns: 6, firstRow: 1, rows: 6 }).drawing;
  expect({ ...part, title: '', labels: [] }).toEqual({ ...whole, title: '', labels: [] });
  expect(textsOf(part.labels, /./)).toEqual(textsOf(whole.labels, /./));
});

test('drawUnrolled of a part may be cut into strips, named on as in one long drawing', () => {
  const { grid } = draw(
    { firstColumn: 2, columns: 4, firstRow: 1, rows: 6 },
    { strips: { count: 2, aboveMm: 1, belowMm: 1 } },
  );
  expect(grid.strips.map(({ firstColumn, columns }) => [firstColumn, columns])).toEqual([
    [4, 2],
    [2, 2],
  ]);
});
