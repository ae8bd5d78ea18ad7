import { expect, test } from 'vitest';
import type { Plan } from '../../src/plan/plan';
import { drawElevation } from '../../src/sheets/draw-elevation';
import type { StageParts } from '../../src/sheets/stage-parts';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { lengthOf, polylines } from './polylines';

const format = (mm: number) => `${Math.round(mm)} mm`;
/** A ring of 30 of 36 columns, 3 m high on a base of 200 mm, under a ceiling at 6.2 m; the hall is 9 m high. */
const parts: StageParts = {
  ...stageFixture({ columns: 30, rows: 6, jointDeg: 10, baseMm: 200, ceilingDiameterMm: 4000 }),
  plannedCeilings: [
    { id: 'ceiling-b', height: { trimMm: 6200, lowestMm: 2300, highestMm: 7000 } },
  ] as unknown as Plan['ceilings'],
};
const drawn = (side: 'front' | 'back' | 'right' = 'front', changes: Partial<StageParts> = {}) =>
  drawElevation({ ...parts, ...changes }, side, 50, format)!;
const textsOf = ({ labels, dimensions }: ReturnType<typeof drawn>) => [
  ...labels.flatMap(({ count, at }) => Array.from({ length: count }, (_, i) => at(i).text)),
  ...dimensions.map(({ text }) => text),
];

test('drawElevation names every height: reach, trim, travel, hall', () => {
  expect(textsOf(drawn())).toEqual(
    expect.arrayContaining([
      'reach 2100 mm',
      'B lowest 2300 mm',
      'B trim 6200 mm',
      'B highest 7000 mm',
      'hall, clear 9000 mm',
    ]),
  );
});

test('drawElevation measures foot, wall and both together', () => {
  const upright = drawn().dimensions.filter(({ x1Mm, x2Mm }) => x1Mm === x2Mm);
  expect(upright.map(({ text, y1Mm, y2Mm }) => [text, y1Mm, y2Mm])).toEqual([
    ['200 mm', -0, -200],
    ['3000 mm', -200, -3200],
    ['3200 mm', -0, -3200],
  ]);
});

test('drawElevation from the open side measures the opening and shows what must drive in', () => {
  // Six columns of 36 are left out: chord of 60 degrees on the radius over corners, 500 / (2 sin 5) = 2868.4 mm.
  expect(textsOf(drawn()).join()).toContain('opening 2868 mm');
  expect(textsOf(drawn()).join()).toContain('drives in: 2550 mm wide, 4000 mm high');
  expect(textsOf(drawn('back')).join()).not.toContain('opening');
  expect(textsOf(drawn('front', { vehicle: { widthMm: null, heightMm: 4000 } })).join()).not.toContain('drives');
});

test('drawElevation has a person of 1.75 m on the floor', () => {
  const person = drawn('back').strokes.find(({ layer }) => layer === 'vehicle')!;
  const heights = polylines(person.lines)
    .flat()
    .map(([, y]) => y!);
  expect([Math.max(...heights), Math.min(...heights)]).toEqual([0, -1750]);
  expect(textsOf(drawn('back'))).toContain('person 1750 mm');
});

test('drawElevation draws floor, reach and clear height at their true heights', () => {
  const y = (layer: string, dash: string) =>
    polylines(drawn().strokes.find((stroke) => stroke.layer === layer && stroke.dash === dash)!.lines).map(
      (line) => line[0]![1],
    );
  expect([y('hall', 'solid'), y('limits', 'dashed'), y('hall', 'chain')]).toEqual([[0], [-2100], [-9000]]);
  const unstated = drawn('front', { hall: { ...parts.hall, clearHeightMm: null } });
  expect(lengthOf(unstated.strokes.find(({ dash, layer }) => layer === 'hall' && dash === 'chain')!.lines)).toBe(0);
  expect(textsOf(unstated).join()).not.toContain('hall');
});

test('drawElevation keeps texts of heights clear of each other on paper', () => {
  // Reach at 2100 and the lowest ceiling at 2300: at 1:50 4 mm, lifted to 4.2 mm apart.
  const levels = drawn().labels[0]!;
  const ys = Array.from({ length: levels.count }, (_, i) => levels.at(i).yMm);
  for (let i = 1; i < ys.length; i++) expect(ys[i - 1]! - ys[i]!).toBeGreaterThanOrEqual(4.2 * 50 - 1e-6);
});

test('drawElevation keeps room in its box for the whole texts of the heights', () => {
  // A fixed-width letter is 0.6 of its height wide (IBM Plex Mono); normal letters are 2.5 mm high on paper: at 1:50 75 mm each.
  const { box, labels } = drawn();
  const levels = Array.from({ length: labels[0]!.count }, (_, i) => labels[0]!.at(i));
  for (const { text, xMm } of levels) expect(box.leftMm).toBeLessThanOrEqual(xMm - text.length * 75);
});

test('drawElevation says from where it is seen', () => {
  expect((['front', 'back', 'right'] as const).map((side) => drawn(side).notes[0])).toEqual([
    'seen level from outside, from the side to which the walls open',
    'seen level from outside, against the open side',
    'seen level from outside, the open side on the left',
  ]);
});

test('drawElevation of nothing is null, of a ceiling alone that ceiling without a reach', () => {
  expect(drawElevation({ ...parts, walls: [], ceilings: [] }, 'front', 50, format)).toBeNull();
  expect(textsOf(drawn('front', { walls: [] })).join()).not.toContain('reach');
});
