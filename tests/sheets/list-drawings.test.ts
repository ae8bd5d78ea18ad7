import { expect, test } from 'vitest';
import { listDrawings } from '../../src/sheets/list-drawings';
import { stageFixture } from '../arbitraries/evaluation-fixture';

const format = (mm: number) => `${Math.round(mm)} mm`;
const parts = stageFixture({ columns: 6, rows: 4, jointDeg: 2, ceilingDiameterMm: 3000 });
const listed = listDrawings(parts.surfaces);

test('listDrawings names the stage from above and each surface from both its sides, as people see them', () => {
  expect(listed.map(({ name, label }) => [name, label])).toEqual([
    ['from-above', 'Stage from above'],
    ['elevation-from-the-open-side', 'Stage level, from the open side'],
    ['elevation-from-behind', 'Stage level, from behind'],
    ['elevation-from-the-side', 'Stage level, from the side'],
    ['A-unrolled-from-behind', 'A unrolled, from behind'],
    ['A-unrolled-from-inside', 'A unrolled, from inside'],
    ['B-unrolled-from-above', 'B unrolled, from above'],
    ['B-unrolled-from-below', 'B unrolled, from below'],
  ]);
});

test('listDrawings draws what it names, in one piece with room for letters at the scale', () => {
  const notes = listed.map(({ draw }) => draw(parts, format, 50).notes[0]);
  const sides = [
    /up is plan/,
    /level.* open/,
    /level.*against/,
    /level.*left/,
    /from behind/,
    /from inside/,
    /from above: left and right/,
    /from below/,
  ];
  for (const [i, side] of sides.entries()) expect(notes[i]).toMatch(side);
  // 4 rows of 500, 8 mm above and 10 mm below at 1:50.
  expect(listed[4]!.draw(parts, format, 50).box).toMatchObject({ topMm: 0, bottomMm: 400 + 2000 + 500 });
});

test('listDrawings leaves out surfaces without panels, and all where there are none', () => {
  const [wall, ceiling] = parts.surfaces.surfaces;
  const empty = { ...parts.surfaces, surfaces: [wall!, { ...ceiling!, count: 0 }] };
  expect(listDrawings(empty).map(({ name }) => name)).not.toContain('B-unrolled-from-above');
  expect(listDrawings({ surfaces: [], offsets: [], total: 0 })).toEqual([]);
});
