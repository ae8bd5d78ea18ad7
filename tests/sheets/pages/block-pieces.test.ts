import { expect, test } from 'vitest';
import type { Block } from '../../../src/sheets/crew-set/crew-part';
import { measureBlocks } from '../../../src/sheets/pages/block-pieces';
import { smallSchedule } from '../../files/small-schedule';
import { textsOf } from './page-boxes';
import { placed } from './placed';

const blocks: readonly Block[] = [
  { kind: 'text', style: 'title', text: 'Crew set' },
  { kind: 'figures', entries: [{ name: 'Panels', value: '64' }] },
  { kind: 'table', title: 'Bill', schedule: smallSchedule([['Cable', 1, 2, 3, 4]]) },
  { kind: 'qr', url: 'https://example.org', caption: 'Scan.' },
  { kind: 'contents' },
];

test('measureBlocks makes pieces of every kind of block, in their order', () => {
  const { pieces, easyMm } = measureBlocks(blocks, String, [{ title: 'Cover', isPart: true, number: 1 }]);
  const texts = textsOf(placed(pieces(120)).items);
  const order = ['Crew set', '64', 'Bill', 'Cable', 'Scan.', 'Contents', 'Cover'].map((text) => texts.indexOf(text));
  expect(order).toEqual([...order].sort((a, b) => a - b));
  expect(order[0]).toBe(0);
  expect(easyMm).toBeGreaterThan(20);
});

test('measureBlocks asks for no width where there is no table', () => {
  expect(measureBlocks(blocks.slice(0, 2), String, []).easyMm).toBe(0);
});
