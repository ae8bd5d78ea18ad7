import { expect, test } from 'vitest';
import { type SurfaceSheetsOptions, surfaceSheets } from '../../../src/sheets/crew-set/surface-sheets';
import { stageFixture } from '../../arbitraries/evaluation-fixture';
import { options as crewOptions } from './sample-set';

const parts = stageFixture({ columns: 60, rows: 10, jointDeg: 2, zoneColumns: 10, ceilingDiameterMm: 4000 });
const options: SurfaceSheetsOptions = {
  surface: 0,
  from: 'behind',
  tint: 'processor',
  leastPanelMm: 9.8,
  title: (part, isWhole) => (isWhole ? 'Whole' : `From C${part.firstColumn}`),
  heightShare: 1,
  caution: 'Take care.',
  since: null,
  under: [{ kind: 'text', style: 'body', text: 'Under.' }],
  allTags: true,
  rooms: crewOptions.rooms,
  format: (mm) => `${mm} mm`,
};
const sheets = (changes: Partial<SurfaceSheetsOptions> = {}) => surfaceSheets(parts, { ...options, ...changes });

test('surfaceSheets of a long wall are as many as it takes, each with its columns, side and caution', () => {
  // 1:50; a strip is 100 mm + 18 high, so two have room in 250 - 12; 390 - 26 hold 36 columns: 72 on a sheet.
  expect(sheets().map(({ title }) => title)).toEqual(['Whole']);
  const cut = sheets({ rooms: [{ widthMm: 390, heightMm: 200 }] });
  expect(cut.map(({ title, side, caution }) => [title, side, caution])).toEqual([
    ['From C1', 'drawn from behind', 'Take care.'],
    ['From C31', 'drawn from behind', 'Take care.'],
  ]);
  expect(cut.map(({ under }) => under.length)).toEqual([1, 0]);
});

test('surfaceSheets draw strips no wider than the paper, each column once', () => {
  const [sheet] = sheets();
  for (const reduction of sheet!.reductions) {
    const { box, strokes } = sheet!.draw(reduction, options.rooms[0]);
    expect((box.rightMm - box.leftMm) / reduction).toBeLessThan(options.rooms[0].widthMm);
    expect((box.bottomMm - box.topMm) / reduction).toBeLessThan(options.rooms[0].heightMm);
    expect(strokes.length).toBeGreaterThan(0);
  }
});

test('surfaceSheets say where a ceiling is drawn from', () => {
  const side = (from: 'inside' | 'behind') => sheets({ surface: 1, from })[0]!.side;
  expect([side('inside'), side('behind')]).toEqual(['drawn from below', 'drawn from above']);
});

test('surfaceSheets draw smaller where they are to leave room under them', () => {
  const part = { firstColumn: 1, columns: 10, firstRow: 1, rows: 10 };
  const largest = (heightShare: number) => sheets({ part, heightShare })[0]!.reductions[0]!;
  // 10 rows: 5000 mm + 18 + 12 on 250 mm: 1:25 (230 mm); on 0.6 of it, 150 mm: 1:50 (130 mm).
  expect([largest(1), largest(0.6)]).toEqual([25, 50]);
});

test('surfaceSheets mark what changed since a revision, and say what the marks mean', () => {
  const panels = new Uint8Array(parts.surfaces.total);
  panels[0] = 1;
  const [sheet] = sheets({ since: { name: 'B', panels } });
  const { strokes, marks, notes } = sheet!.draw(50, options.rooms[0]);
  expect(strokes.filter(({ layer }) => layer === 'changes')).toHaveLength(1);
  expect(marks.filter(({ layer }) => layer === 'changes')).toHaveLength(1);
  expect(notes.at(-1)).toBe('dashed, with a triangle: built or wired otherwise than in revision B');
  // Columns without a changed panel have no such note.
  const rest = sheets({ since: { name: 'B', panels }, part: { firstColumn: 11, columns: 10, firstRow: 1, rows: 10 } });
  expect(rest[0]!.draw(50, options.rooms[0]).notes).toHaveLength(1);
});
