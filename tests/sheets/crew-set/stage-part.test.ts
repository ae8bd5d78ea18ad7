import { expect, test } from 'vitest';
import { cautions } from '../../../src/calc/cautions';
import { elevationPart, fromAbovePart } from '../../../src/sheets/crew-set/stage-part';
import { stageFixture } from '../../arbitraries/evaluation-fixture';
import { options } from './sample-set';

const wall = stageFixture({ columns: 12, rows: 4, jointDeg: 5 });
const roofed = stageFixture({ columns: 12, rows: 4, jointDeg: 5, ceilingDiameterMm: 2000 });
const none = { ...wall, surfaces: { surfaces: [], offsets: [], total: 0 }, walls: [] };

test('fromAbovePart draws the stage in its hall', () => {
  const [sheet] = fromAbovePart(wall, options)!.sheets;
  if (sheet?.kind !== 'drawing') throw new Error('no drawing');
  expect(sheet.draw(100, options.rooms[0]).title).toBe('The stage from above in its hall');
  expect(sheet.side).toBe('drawn from above');
  expect(fromAbovePart(none, options)).toBeNull();
});

test('fromAbovePart warns of exits in a ring under a ceiling, of stacked load without one', () => {
  const caution = (parts: typeof wall) => fromAbovePart(parts, options)!.sheets[0]!.caution;
  const ring = stageFixture({ columns: 30, rows: 4, jointDeg: 10, ceilingDiameterMm: 2000 });
  expect([caution(ring), caution(roofed), caution(wall)]).toEqual([
    ...[cautions.exits, cautions.stackedLoad, cautions.stackedLoad],
  ]);
  expect(caution({ ...roofed, walls: [] })).toBe(cautions.hangingLoad);
});

test('elevationPart draws the stage level from three sides, each said', () => {
  const part = elevationPart(wall, options)!;
  expect(part.sheets.map(({ side }) => side)).toEqual([
    'drawn from the open side',
    'drawn from behind',
    'drawn from the side',
  ]);
  const titles = part.sheets.map((sheet) => (sheet.kind === 'drawing' ? sheet.draw(100, options.rooms[0]).title : ''));
  expect(new Set(titles).size).toBe(3);
  expect(elevationPart(none, options)).toBeNull();
});

test('elevationPart warns of moving parts where a ceiling hangs, else of height', () => {
  const caution = (parts: typeof wall) => elevationPart(parts, options)!.sheets.map((sheet) => sheet.caution);
  expect(new Set(caution(wall))).toEqual(new Set([cautions.height]));
  expect(new Set(caution(roofed))).toEqual(new Set([cautions.movingParts]));
});
