import { expect, test } from 'vitest';
import type { DrawingSheet } from '../../../src/sheets/crew-set/crew-part';
import { measureBlocks } from '../../../src/sheets/pages/block-pieces';
import { drawingRoom, layOutDrawing } from '../../../src/sheets/pages/lay-out-drawing';
import { type PaperId, paperById, papers } from '../../../src/sheets/pages/papers';
import { itemBox, outside, textsOf } from './page-boxes';
import { drawingSheet, tableSheet } from './sheets';

const lay = (sheet: DrawingSheet, id: PaperId) =>
  layOutDrawing(sheet, measureBlocks(sheet.under, String, []), paperById(id), {
    paperName: paperById(id).name,
    lengths: 'metric',
    format: (value) => `${value}`,
    inks: 'colour',
  });

test.each(papers)(
  'layOutDrawing keeps lines and texts within the frame of $name, and draws to the scale that it states',
  ({ id }) => {
    const [page, ...others] = lay(drawingSheet(), id);
    expect(others).toEqual([]);
    expect(outside(page!.items, page!.shape.body)).toEqual([]);
    const reduction = Number(page!.scale!.slice(2));
    const edge = page!.items.find((item) => item.kind === 'path' && item.stroke?.widthMm === 0.7 && item.lines.closed)!;
    const { leftMm, rightMm } = itemBox(edge);
    // The square is 4 m wide.
    expect(rightMm - leftMm).toBeCloseTo(4000 / reduction, 2);
    expect(page!.shape.widthMm).toBeGreaterThan(page!.shape.heightMm);
  },
);

test('layOutDrawing takes a larger scale on larger paper, and upright paper for what is high', () => {
  const fine = drawingSheet({ reductions: [10, 15, 20, 25] });
  const reductionOn = (id: PaperId) => Number(lay(fine, id)[0]!.scale!.slice(2));
  expect(reductionOn('a3')).toBeLessThan(reductionOn('a4'));
  const high = drawingSheet({
    draw: () => ({
      ...drawingSheet().draw(1, { widthMm: 1, heightMm: 1 }),
      dimensions: [{ x1Mm: 1000, y1Mm: 500, x2Mm: 1000, y2Mm: 11_500, text: '11 m' }],
    }),
  });
  const [page] = lay(high, 'a4');
  expect(page!.shape.heightMm).toBeGreaterThan(page!.shape.widthMm);
});

test('layOutDrawing puts a short table under the drawing and a long one on the next pages too', () => {
  const short = drawingSheet({ under: tableSheet(3).blocks, reductions: [50] });
  expect(lay(short, 'a4').map(({ items }) => textsOf(items).filter((text) => /^1-\d+$/.test(text)))).toEqual([
    ['1-001', '1-002', '1-003'],
  ]);
  const long = lay(drawingSheet({ under: tableSheet(200).blocks, reductions: [50] }), 'a4');
  expect(long.length).toBeGreaterThan(1);
  expect(long.flatMap(({ items }) => textsOf(items).filter((text) => /^1-\d+$/.test(text)))).toHaveLength(200);
  for (const { items, shape } of long) expect(outside(items, shape.body)).toEqual([]);
  expect(long.map(({ scale }) => scale)).toEqual(['1:50', ...long.slice(1).map(() => null)]);
});

test('layOutDrawing gives the drawing the room that drawingRoom promises, however long its notes', () => {
  const rooms: number[] = [];
  const noted = drawingSheet({
    draw: (_, room) => {
      rooms.push(room.heightMm);
      return { ...drawingSheet().draw(1, room), notes: ['on and on '.repeat(60)] };
    },
  });
  const [page] = lay(noted, 'letter');
  expect(outside(page!.items, page!.shape.body)).toEqual([]);
  expect(rooms).toContain(drawingRoom(paperById('letter'), 'lying').heightMm);
});
