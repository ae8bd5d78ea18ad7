import { expect, test } from 'vitest';
import { drawingFile, drawingFiles } from '../../src/files/drawing-files';
import { listDrawings } from '../../src/sheets/list-drawings';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { readDxf } from './read-dxf';
import { readSvg } from './read-svg';

const format = (mm: number) => `${Math.round(mm)} mm`;
const parts = stageFixture({ columns: 6, rows: 4, jointDeg: 2, zoneColumns: 3, ceilingDiameterMm: 3000 });
const decode = (bytes: Uint8Array) => new TextDecoder().decode(bytes);

test('drawingFiles makes the stage from above, level from three sides, and each surface from both its sides', () => {
  const names = [...drawingFiles(parts, format, 'dxf')].map(({ name }) => name);
  expect(names).toEqual([
    'from-above.dxf',
    'elevation-from-the-open-side.dxf',
    'elevation-from-behind.dxf',
    'elevation-from-the-side.dxf',
    'A-unrolled-from-behind.dxf',
    'A-unrolled-from-inside.dxf',
    'B-unrolled-from-above.dxf',
    'B-unrolled-from-below.dxf',
  ]);
});

test('drawingFiles writes what its kind says, from the side that its name says', () => {
  const dxf = [...drawingFiles(parts, format, 'dxf')].map(({ bytes }) => readDxf(decode(bytes)));
  const words = dxf.map(({ texts }) => texts.map(({ text }) => text).join('\n'));
  const sides = [
    'seen from above: up is plan',
    'from the side to which the walls open',
    'against the open side',
    'the open side on the left',
    'seen from behind',
    'seen from inside',
    'seen from above: left',
    'below',
  ];
  expect(words.map((text, i) => text.includes(sides[i]!))).toEqual(sides.map(() => true));
  const svg = [...drawingFiles(parts, format, 'svg')].map(({ name, bytes }) => [name, readSvg(decode(bytes))] as const);
  for (const [name, [root]] of svg) expect([name.endsWith('.svg'), root!.name]).toEqual([true, 'svg']);
});

test('drawingFiles letters the panels: at its scale every panel of half a metre has its place on its run', () => {
  const file = [...drawingFiles(parts, format, 'dxf')].find(({ name }) => name === 'A-unrolled-from-behind.dxf')!;
  const behind = readDxf(decode(file.bytes));
  const places = behind.texts.filter(({ layer, text }) => layer === 'runs' && /^\d+$/.test(text));
  expect(places.length).toBe(24);
});

test('drawingFiles makes nothing of a plan without panels', () => {
  const none = { ...parts, surfaces: { surfaces: [], offsets: [], total: 0 } };
  expect([...drawingFiles(none, format, 'svg')]).toEqual([]);
});

test('drawingFile makes one of them, the same as among all', () => {
  const alone = drawingFile(listDrawings(parts.surfaces)[1]!, parts, format, 'svg');
  expect(alone).toEqual([...drawingFiles(parts, format, 'svg')][1]);
});
