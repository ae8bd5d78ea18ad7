import { expect, test } from 'vitest';
import { pagesToPdf } from '../../src/files/pages-to-pdf';
import { layOutPages, type PagesOptions } from '../../src/sheets/pages/lay-out-pages';
import type { Page } from '../../src/sheets/pages/page';
import { type PaperId, papers } from '../../src/sheets/pages/papers';
import { textsOf } from '../sheets/pages/page-boxes';
import { printFonts } from '../sheets/pages/print-fonts';
import { drawingSheet, smallSet } from '../sheets/pages/sheets';
import { readPdf } from './read-pdf-pages';

const options: PagesOptions = {
  paper: 'a4',
  titleBlock: { plan: 'Lower hall', revision: 'B', date: '2026-11-25', fingerprint: '1a2b3c4d', stops: 2 },
  inks: 'colour',
  lengths: 'metric',
  format: (value, unit) => `${value} ${unit}`,
};
const info = { title: 'Lower hall, crew set', date: '2026-11-25' };
const inPdf = (pages: readonly Page[]) => pagesToPdf(pages, printFonts, info);

test.each(papers)(
  'a set on $name is read back with exact pages and every text, by a reader that is none of ours',
  async ({ id }) => {
    const pages = layOutPages(smallSet, { ...options, paper: id });
    const { title, pages: read, printScaling } = await readPdf(await inPdf(pages));
    expect([title, printScaling]).toEqual([info.title, 'None']);
    expect(read).toHaveLength(pages.length);
    read.forEach((page, i) => {
      expect(page.widthMm).toBeCloseTo(pages[i]!.widthMm, 3);
      expect(page.heightMm).toBeCloseTo(pages[i]!.heightMm, 3);
      // A reader joins what stands close on one line: the signs count, not where strings end.
      expect([...page.texts.join('')].filter(isNoBlank).sort()).toEqual(
        [...textsOf(pages[i]!.items).join('')].filter(isNoBlank).sort(),
      );
    });
  },
);

const isNoBlank = (sign: string) => sign.trim() !== '';

/** The drawing's square is 4 m wide, on every sheet. */
const at100 = [{ id: 'from-behind' as const, title: 'Wall', sheets: [drawingSheet({ reductions: [100] })] }];

test.each(papers.map(({ id }) => id))(
  '1 m at 1:100 measures 10 mm on %s: on the scale bar and on a wall',
  async (paper: PaperId) => {
    const [page] = (await readPdf(await inPdf(layOutPages(at100, { ...options, paper })))).pages;
    const widths = page!.paths.flatMap(({ lines, widthMm }) =>
      lines.map((line) => ({ widthMm, long: Math.max(...line.map(([x]) => x)) - Math.min(...line.map(([x]) => x)) })),
    );
    const edge = widths.find(({ widthMm, long }) => Math.abs(widthMm - 0.7) < 1e-3 && long < 100);
    // Either end is rounded to a micrometre.
    expect(edge!.long).toBeCloseTo(40, 2);
    // The longest bar up to 62 mm is one of 5 m, whose end is marked so.
    expect(page!.texts.join(' ')).toContain('5000 mm');
    const mark = page!.places.find(({ text }) => text.includes('5000 mm'))!;
    const bar = page!.paths.find(
      ({ lines, isFilled }) =>
        !isFilled &&
        lines.length === 1 &&
        lines[0]!.length === 5 &&
        Math.abs(lines[0]![2]![0] - mark.xMm - mark.longMm) < 0.01,
    )!;
    const xs = bar.lines[0]!.map(([x]) => x);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(50, 2);
  },
);

test('the same pages give the same bytes', async () => {
  const made = () => inPdf(layOutPages(smallSet, options));
  expect(await made()).toEqual(await made());
});

test('texts are as long in the file as they were laid out, in every face', async () => {
  const faces = ['sans', 'strong', 'mono'] as const;
  const text = 'office 1/2 fluffy AV To 3B-04';
  const base = {
    kind: 'text',
    text,
    xMm: 20,
    sizeMm: 5,
    align: 'start',
    turned: false,
    colour: '#000000',
    rim: false,
  } as const;
  const page: Page = {
    widthMm: 210,
    heightMm: 297,
    title: '',
    partId: 'cover',
    items: faces.map((face, i) => ({ ...base, face, yMm: 50 + 20 * i })),
  };
  const { textWidthMm } = await import('../../src/sheets/pages/text-width');
  const [read] = (await readPdf(await inPdf([page]))).pages;
  faces.forEach((face, i) => {
    const here = read!.places.filter(({ yMm }) => Math.abs(yMm - 50 - 20 * i) < 0.01);
    expect(here.map((one) => one.text).join('')).toBe(text);
    const end = Math.max(...here.map(({ xMm, longMm }) => xMm + longMm));
    expect(end - 20).toBeCloseTo(textWidthMm(text, face, 5), 3);
  });
});

test('a link lies over its place and leads where it should', async () => {
  const url = 'https://example.org/a(b)#p=1';
  const page: Page = {
    widthMm: 210,
    heightMm: 297,
    title: '',
    partId: 'cover',
    items: [{ kind: 'link', box: { leftMm: 20, topMm: 30, rightMm: 60, bottomMm: 70 }, url }],
  };
  const [read] = (await readPdf(await inPdf([page]))).pages;
  expect(read!.links).toHaveLength(1);
  expect(read!.links[0]!.url).toBe(url);
  [20, 297 - 70, 60, 297 - 30].forEach((mm, i) => {
    expect(read!.links[0]!.box[i]).toBeCloseTo(mm, 3);
  });
});
