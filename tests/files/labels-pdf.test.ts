import { expect, test } from 'vitest';
import { labelsPdf } from '../../src/files/labels-pdf';
import type { LabelGrid } from '../../src/sheets/labels/label-grid';
import { startingGrids } from '../../src/sheets/labels/starting-grids';
import { allLabels, smallStage } from '../sheets/labels/labelled-fixture';
import { printFonts } from '../sheets/pages/print-fonts';
import { readPdf } from './read-pdf-pages';

const cables = allLabels(smallStage());
const [first] = startingGrids as [LabelGrid];
const options = { address: null, planId: 'p', used: 0, hasLines: false };

test('labelsPdf is read back as sheets of the paper with both ends of every cable', async () => {
  const { name, bytes } = await labelsPdf('Lower hall', cables, first, options, printFonts);
  const { title, pages } = await readPdf(bytes);
  expect([name, title, pages.length]).toEqual(['labels.pdf', 'Lower hall, labels', 2]);
  expect(pages[0]!.widthMm).toBeCloseTo(210, 3);
  const texts = pages.flatMap((page) => page.texts);
  for (const { name: cable } of cables) {
    const times = 2 * cables.filter((other) => other.name === cable).length;
    expect(texts.filter((text) => text === cable)).toHaveLength(times);
  }
});

test('labelsPdf has no page where the grid has no room', async () => {
  const { bytes } = await labelsPdf('Lower hall', cables, { ...first, columns: 60 }, options, printFonts);
  expect((await readPdf(bytes)).pages).toEqual([]);
});
