import { expect, test } from 'vitest';
import { layOutPages, type PagesOptions, pageSteps } from '../../../src/sheets/pages/lay-out-pages';
import { papers } from '../../../src/sheets/pages/papers';
import { textsOf } from './page-boxes';
import { smallSet } from './sheets';

const options: PagesOptions = {
  paper: 'a4',
  titleBlock: { plan: 'Lower hall', revision: 'B', date: '2026-11-25', fingerprint: '1a2b3c4d', stops: 2 },
  inks: 'colour',
  lengths: 'metric',
  format: (value) => `${value}`,
};

test.each(papers)(
  'layOutPages numbers the pages of $name through, each with what the title block must say',
  ({ id, name }) => {
    const pages = layOutPages(smallSet, { ...options, paper: id });
    pages.forEach(({ items, title }, i) => {
      const texts = textsOf(items);
      for (const said of [`${i + 1} of ${pages.length}`, title, 'B', '2026-11-25', '1a2b3c4d', '2']) {
        expect(texts).toContain(said);
      }
    });
    const { widthMm, heightMm } = papers.find((paper) => paper.name === name)!;
    for (const page of pages) {
      expect([
        [widthMm, heightMm],
        [heightMm, widthMm],
      ]).toContainEqual([page.widthMm, page.heightMm]);
    }
  },
);

test('layOutPages fills the contents with the numbers of parts and of their sheets', () => {
  const pages = layOutPages(smallSet, options);
  const texts = textsOf(pages[0]!.items);
  // A contents' number follows its title.
  const numberOf = (title: string) => Number(texts[texts.indexOf(title) + 1]);
  for (const title of ['Zone 1', 'Zone 2', 'Ports']) {
    expect(numberOf(title)).toBe(pages.findIndex((page) => page.title === title) + 1);
  }
  expect(numberOf('Zones')).toBe(numberOf('Zone 1'));
  expect(pages.map(({ partId }) => partId).slice(0, 4)).toEqual(['cover', 'zones', 'zones', 'ports']);
});

test('pageSteps tells how far it is and ends with the same pages', () => {
  const steps = pageSteps(smallSet, options);
  const shares: number[] = [];
  let step = steps.next();
  for (; !step.done; step = steps.next()) shares.push(step.value);
  expect(shares).toEqual([0.25, 0.5, 0.75, 1]);
  expect(step.value).toEqual(layOutPages(smallSet, options));
});
