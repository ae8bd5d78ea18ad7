import { expect, test } from 'vitest';
import { panelThings } from '../../../src/calc/compare/panel-things';
import { plainSurface, plainType } from '../zones/plain-surface';

const type = plainType(216);
const wall = plainSurface({ columns: 2, bands: [{ type, rows: 1 }] });
const setOf = (table: typeof wall) => ({ surfaces: [table], offsets: [0], total: table.count });
const thingOf = (table: typeof wall) => panelThings(setOf(table)).things[0]!;

test('panelThings has each panel by its name', () => {
  const b = { ...wall, letter: 'B' };
  const { things } = panelThings({ surfaces: [wall, b], offsets: [0, 2], total: 4 });
  expect(things.map(({ name }) => name)).toEqual(['A C1 R1', 'A C2 R1', 'B C1 R1', 'B C2 R1']);
});

test('panelThings takes a panel as the same where it stands at the same place, to the micrometre', () => {
  const { content } = thingOf(wall);
  const at = (mm: number) => ({ ...wall, xMm: wall.xMm.map((x) => x + mm) });
  expect(thingOf(at(1e-6)).content).toBe(content);
  expect(thingOf(at(0.002)).content).not.toBe(content);
  expect(thingOf({ ...wall, zMm: wall.zMm.map((z) => z + 1) }).content).not.toBe(content);
  expect(thingOf({ ...wall, yMm: wall.yMm.map((y) => y + 1) }).content).not.toBe(content);
  expect(thingOf({ ...wall, headingDeg: wall.headingDeg.map((heading) => heading + 1) }).content).not.toBe(content);
});

test('panelThings has the type as detail, by what its sheet says and not by its id', () => {
  const { detail } = thingOf(wall);
  const of = (more: Partial<typeof type>) => thingOf({ ...wall, types: [{ ...type, ...more }] }).detail;
  expect(of({ panelId: 'other' })).toBe(detail);
  for (const more of [{ name: 'Other' }, { pixelsHigh: 200 }, { heightMm: 600 }, { turnDeg: 180 } as const]) {
    expect(of(more)).not.toBe(detail);
  }
});

test('panelThings says place and type with figures that the edge writes out', () => {
  const list = panelThings(setOf({ ...wall, types: [{ ...type, turnDeg: 90 }], xMm: Float64Array.of(1, 1500) }));
  const mm = (value: number) => ({ value, unit: 'mm' });
  const deg = (value: number) => ({ value, unit: 'deg' });
  const heading = wall.headingDeg[1]!;
  expect(list.sayContent(1)).toEqual([
    'x ',
    mm(1500),
    ', y ',
    mm(wall.yMm[1]!),
    ', ',
    mm(250),
    ' up, heading ',
    deg(heading),
  ]);
  expect(list.sayDetail(1)).toEqual(['Panel 216, ', mm(500), ' × ', mm(500), ', 216 × 216 px', ', turned ', deg(90)]);
});
