import { expect, test } from 'vitest';
import type { BlocksSheet } from '../../../src/sheets/crew-set/crew-part';
import { measureBlocks } from '../../../src/sheets/pages/block-pieces';
import { layOutBlocks } from '../../../src/sheets/pages/lay-out-blocks';
import { type PaperId, paperById, papers } from '../../../src/sheets/pages/papers';
import { outside, textsOf } from './page-boxes';
import { rowsOf, tableSheet } from './sheets';

const lay = (sheet: BlocksSheet, paper: PaperId) =>
  layOutBlocks(sheet, measureBlocks(sheet.blocks, String, []), paperById(paper));

test.each(papers)(
  'layOutBlocks shows every row of a long table once on $name, its head on every page, all in the frame',
  ({ id }) => {
    const pages = lay(tableSheet(300), id);
    const texts = pages.map(({ items }) => textsOf(items));
    const names = texts.flat().filter((text) => /^1-\d+$/.test(text));
    expect(names).toEqual(rowsOf(300).map(([name]) => name));
    for (const page of texts) expect(page).toContain('Needed');
    expect(texts.flat().filter((text) => text === '300 ports')).toHaveLength(1);
    for (const { items, shape } of pages) expect(outside(items, shape.body)).toEqual([]);
  },
);

test('layOutBlocks sets a narrow table in columns where that saves pages, and leaves a short one in one', () => {
  const short = lay(tableSheet(10), 'a4');
  expect(short).toHaveLength(1);
  // On A4, 174 mm wide, a table of some 80 mm stands in two columns: 90 rows, which need two pages in one, go into one.
  expect(lay(tableSheet(90), 'a4')).toHaveLength(1);
  const heads = textsOf(lay(tableSheet(90), 'a4')[0]!.items).filter((text) => text === 'Needed');
  expect(heads).toHaveLength(2);
});

test('layOutBlocks keeps small paper upright and lays large paper', () => {
  const shapes = (id: PaperId) => lay(tableSheet(10), id).map(({ shape }) => shape.widthMm > shape.heightMm);
  expect([shapes('a4'), shapes('letter'), shapes('a3'), shapes('tabloid')]).toEqual([[false], [false], [true], [true]]);
});

test('layOutBlocks says the title of the sheet on every page, and that it goes on', () => {
  const titles = lay(tableSheet(600, { title: 'All ports' }), 'a4').map(({ items }) => textsOf(items)[0]);
  expect(titles[0]).toBe('All ports');
  expect(new Set(titles.slice(1))).toEqual(new Set(['All ports, continued']));
});

test('layOutBlocks leaves the heading out where the sheet begins with a title, and gives an empty sheet one page', () => {
  const blocks = [{ kind: 'text', style: 'title', text: 'Lower hall' } as const];
  expect(textsOf(lay(tableSheet(0, { title: 'Crew set', blocks }), 'a4')[0]!.items)).toEqual(['Lower hall']);
  expect(lay(tableSheet(0, { blocks: [] }), 'a4')).toHaveLength(1);
});
