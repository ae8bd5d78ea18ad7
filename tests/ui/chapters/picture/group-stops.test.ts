import { expect, test } from 'vitest';
import type { Check } from '../../../../src/calc/chapter';
import type { RateCell } from '../../../../src/calc/rates/rate-table';
import { groupStops } from '../../../../src/ui/chapters/picture/group-stops';

const stop = (sentence: string): Check => ({
  id: 'ports.load',
  chapter: 'ports',
  severity: 'stop',
  measured: null,
  limit: null,
  unit: 'count',
  where: [],
  sentence,
});
const cell = (frames: number, sentence: string | null, refresh: string | null = null): RateCell => ({
  mode: { rate: { frames, seconds: 1 }, depthBits: 8, pictures: 1 },
  panelsAPort: 1,
  ports: 1,
  processors: 1,
  stop: sentence === null ? null : stop(sentence),
  refresh: refresh === null ? null : stop(refresh),
  current: false,
});

test('groupStops says each sentence once, with the cells it stops in the order of the table', () => {
  const cells = [cell(24, null), cell(48, 'few ports'), cell(60, 'few boxes'), cell(100, 'few ports')];
  const groups = groupStops(cells, ({ sentence }) => sentence);
  expect(groups.map(({ sentence, cells: stopped }) => [sentence, stopped.map(({ mode }) => mode.rate.frames)])).toEqual(
    [
      ['few ports', [48, 100]],
      ['few boxes', [60]],
    ],
  );
});

test('groupStops of cells that all fit is empty', () => {
  expect(groupStops([cell(24, null)], () => 'no')).toEqual([]);
});

test('groupStops says of a cell that fits what is odd of its refresh, and of one that does not what stops it', () => {
  const cells = [cell(25, null, 'no multiple'), cell(50, 'few ports', 'no multiple'), cell(100, null, 'no multiple')];
  const groups = groupStops(cells, ({ sentence }) => sentence);
  expect(groups.map(({ sentence, cells: found }) => [sentence, found.map(({ mode }) => mode.rate.frames)])).toEqual([
    ['no multiple', [25, 100]],
    ['few ports', [50]],
  ]);
});
