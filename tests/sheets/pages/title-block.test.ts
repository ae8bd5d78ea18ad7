import { expect, test } from 'vitest';
import { drawTitleBlock, type SheetWords, titleBlockHeightMm } from '../../../src/sheets/pages/title-block';
import { outside, textsOf } from './page-boxes';

const block = { plan: 'Lower hall', revision: 'B', date: '2026-11-25', fingerprint: '1a2b3c4d', stops: 2 };
const words: SheetWords = {
  title: 'Wall A',
  side: 'drawn from behind',
  caution: 'Electricity: a licensed electrician decides.',
  scale: '1:50',
  number: 7,
  of: 93,
};
const upright = { leftMm: 20, topMm: 10, rightMm: 200, bottomMm: 287 };
const lying = { leftMm: 20, topMm: 10, rightMm: 287, bottomMm: 200 };

/** Frame widened by half its line. */
const within = ({ leftMm, topMm, rightMm, bottomMm }: typeof upright) => ({
  leftMm: leftMm - 0.35,
  topMm: topMm - 0.35,
  rightMm: rightMm + 0.35,
  bottomMm: bottomMm + 0.35,
});

test.each([
  ['upright', upright],
  ['lying', lying],
])('drawTitleBlock says everything of plan and sheet in an %s frame', (_, frame) => {
  const items = drawTitleBlock(frame, block, words);
  const texts = textsOf(items);
  for (const said of [
    'Lower hall',
    'B',
    '2026-11-25',
    '1a2b3c4d',
    '2',
    'Wall A',
    'drawn from behind',
    '1:50',
    '7 of 93',
  ]) {
    expect(texts.filter((text) => text === said)).toHaveLength(1);
  }
  expect(texts).toContain(words.caution);
  expect(outside(items, within(frame))).toEqual([]);
  const top = frame.bottomMm - titleBlockHeightMm(frame, true);
  expect(
    outside(
      items.filter(({ kind }) => kind === 'text'),
      { ...frame, topMm: top },
    ),
  ).toEqual([]);
});

test('drawTitleBlock takes two rows where the frame is narrow, and no room for a caution where there is none', () => {
  expect(titleBlockHeightMm(upright, false)).toBe(2 * titleBlockHeightMm(lying, false));
  expect(textsOf(drawTitleBlock(lying, block, { ...words, caution: null }))).not.toContain(words.caution);
  expect(titleBlockHeightMm(lying, false)).toBeLessThan(titleBlockHeightMm(lying, true));
});

test('drawTitleBlock cuts nothing of names of 200 signs', () => {
  const plan = 'WWWWWWWWW '.repeat(20).trim();
  const title = 'x'.repeat(200);
  const items = drawTitleBlock(
    upright,
    { ...block, plan, revision: 'W'.repeat(20) },
    { ...words, title, caution: 'Long. '.repeat(60) },
  );
  expect(outside(items, within(upright))).toEqual([]);
  const said = textsOf(items).join('').replaceAll(' ', '');
  expect(said).toContain(plan.replaceAll(' ', ''));
  expect(said).toContain(title);
});

test('drawTitleBlock has a dash where the plan or its revision has no name, so that no cell stands empty', () => {
  const texts = textsOf(drawTitleBlock(lying, { ...block, plan: ' ', revision: '' }, words)) as unknown;
  expect(JSON.stringify(texts).match(/–/g)).toHaveLength(2);
});
