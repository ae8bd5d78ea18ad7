import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LabelGrid, labelBox, labelSize } from '../../../src/sheets/labels/label-grid';
import { type LabelOptions, layOutLabels } from '../../../src/sheets/labels/lay-out-labels';
import { startingGrids } from '../../../src/sheets/labels/starting-grids';
import type { PagePath } from '../../../src/sheets/pages/page';
import { samplePlan } from '../../arbitraries/sample-plans';
import { outside, textsOf } from '../pages/page-boxes';
import { readQr } from '../read-qr';
import { allLabels, labelInputsOf, smallStage } from './labelled-fixture';

const cables = allLabels(smallStage());
const plain: LabelOptions = { address: null, planId: 'p', used: 0, hasLines: false };
const coded: LabelOptions = { ...plain, address: 'https://plan.example/' };
const [first] = startingGrids as [LabelGrid];
const pagesOf = (...args: Parameters<typeof layOutLabels>) => {
  const sheets = layOutLabels(...args)!;
  return Array.from({ length: sheets.count }, (_, i) => sheets.page(i));
};

describe('layOutLabels', () => {
  it('has both ends of every cable, side by side, on as many sheets as that takes', () => {
    const pages = pagesOf(cables, first, plain);
    // 9 cables have 18 ends; 14 go on a sheet.
    expect(pages).toHaveLength(2);
    expect(pages[0]).toMatchObject({ widthMm: 210, heightMm: 297, title: 'Labels, sheet 1 of 2' });
    const names = pages
      .flatMap(({ items }) => textsOf(items))
      .filter((text) => cables.some(({ name }) => name === text));
    expect(names).toEqual(cables.flatMap(({ name }) => [name, name]));
  });
  it('has the end where a cable comes from first, its own end in strong letters', () => {
    const [page] = pagesOf(cables.slice(0, 1), first, plain);
    const strong = page!.items.flatMap((item) => (item.kind === 'text' && item.face === 'strong' ? [item.text] : []));
    expect(strong).toEqual(['1A', 'from Processor 1', '1A', 'to Breakout 1A']);
  });
  it('leaves out the labels that a sheet has no more, and no cable', () => {
    const [page] = pagesOf(cables.slice(0, 1), first, { ...plain, used: 3 });
    const { leftMm } = labelBox(first, labelSize(first)!, 3);
    const texts = page!.items.flatMap((item) => (item.kind === 'text' ? [item] : []));
    expect(texts[0]!.xMm).toBeGreaterThan(leftMm);
    expect(texts).toHaveLength(8);
    expect(pagesOf(cables, first, { ...plain, used: 99 })).toHaveLength(3);
  });
  it('has a code on each label that an outside decoder reads as the way to its item, and a link to it', () => {
    const [page] = pagesOf(cables, first, coded);
    const codes = page!.items.filter((item): item is PagePath => item.kind === 'path' && item.fill !== null);
    const links = page!.items.flatMap((item) => (item.kind === 'link' ? [item] : []));
    expect([codes.length, links.length]).toEqual([14, 14]);
    for (const [i, { lines }] of codes.entries()) {
      const { box, url } = links[i]!;
      const modules = 29;
      const module = (box.rightMm - box.leftMm) / (modules + 8);
      const xyMm = lines.xyMm.map((mm, at) => (mm - (at % 2 === 0 ? box.leftMm : box.topMm)) / module - 4);
      expect(readQr({ ...lines, xyMm }, modules)).toBe(url);
      expect(url).toBe(`https://plan.example/#of=p&${cables[i >> 1]!.item.kind}=${cables[i >> 1]!.item.name}`);
    }
  });
  it('says where codes have no room', () => {
    const small = { ...first, rows: 20 };
    expect(layOutLabels(cables, first, coded)!.hasCodes).toBe(true);
    expect(layOutLabels(cables, small, coded)!.hasCodes).toBe(false);
    expect(layOutLabels(cables, first, plain)!.hasCodes).toBe(false);
    expect(
      layOutLabels(cables, small, coded)!
        .page(0)
        .items.every(({ kind }) => kind === 'text'),
    ).toBe(true);
  });
  it('draws a line round each label where it is asked for', () => {
    const [page] = pagesOf(cables.slice(0, 2), first, { ...plain, hasLines: true });
    const [frame] = page!.items as [PagePath];
    expect([frame.kind, frame.fill, frame.lines.ends.length]).toEqual(['path', null, 4]);
  });
  it('has no sheet without a cable, and is null where the grid has no room', () => {
    expect(layOutLabels([], first, plain)).toMatchObject({ labels: 0, count: 0 });
    expect(layOutLabels(cables, { ...first, columns: 60 }, plain)).toBeNull();
  });
  it.each(startingGrids)('keeps all of a sample inside its labels, $columns by $rows on $paper', (grid) => {
    const size = labelSize(grid)!;
    const sample = allLabels(labelInputsOf(samplePlan('ring-feet'))).slice(0, grid.columns * grid.rows);
    const [page] = pagesOf(sample, grid, coded);
    const boxes = Array.from({ length: grid.columns * grid.rows }, (_, place) => labelBox(grid, size, place));
    const strays = page!.items.filter((item) => boxes.every((box) => outside([item], box).length > 0));
    expect(outside(strays, { leftMm: 0, topMm: 0, rightMm: 0, bottomMm: 0 })).toEqual([]);
  });
  it('keeps text and code inside the label on any grid', () => {
    const mm = fc.double({ min: 0, max: 30, noNaN: true });
    const grid = fc.record({
      paper: fc.constantFrom('a4' as const, 'a3' as const, 'letter' as const, 'tabloid' as const),
      columns: fc.integer({ min: 1, max: 12 }),
      rows: fc.integer({ min: 1, max: 30 }),
      leftMm: mm,
      rightMm: mm,
      topMm: mm,
      bottomMm: mm,
      acrossMm: fc.double({ min: 0, max: 5, noNaN: true }),
      downMm: fc.double({ min: 0, max: 5, noNaN: true }),
    });
    fc.assert(
      fc.property(grid, fc.boolean(), (any, hasCodes) => {
        const size = labelSize(any);
        const sheets = layOutLabels(cables.slice(0, 1), any, hasCodes ? coded : plain);
        expect(sheets === null).toBe(size === null);
        if (sheets === null || size === null) return;
        const boxes = [0, 1].map((place) => labelBox(any, size, place));
        const { items } = sheets.page(0);
        const strays = items.filter((item) => boxes.every((box) => outside([item], box).length > 0));
        // A grid of one label has the second end on the next sheet.
        expect(strays).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });
});
