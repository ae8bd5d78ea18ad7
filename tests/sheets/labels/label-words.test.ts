import { expect, test } from 'vitest';
import { labelWords } from '../../../src/sheets/labels/label-words';
import type { LabelledCable } from '../../../src/sheets/labels/labelled-cable';

const homeRun: LabelledCable = {
  kind: 'home-run',
  name: '3B-04',
  from: { words: 'Port 3B-04', short: '3B-04' },
  to: { words: 'A C38 R1', short: 'A C38 R1' },
  lengthClass: 'Home run 20 m',
  count: 1,
  item: { kind: 'port', name: '3B-04' },
  panel: 0,
};

test('labelWords says from, to and length class on both ends, and which end it is', () => {
  const words = { name: '3B-04', from: 'from Port 3B-04', to: 'to A C38 R1', cable: 'Home run 20 m' };
  expect(labelWords(homeRun, 'from')).toEqual({ ...words, end: 'from', far: 'to A C38 R1' });
  expect(labelWords(homeRun, 'to')).toEqual({ ...words, end: 'to', far: 'from 3B-04' });
});

test('labelWords says what a cable is for where its name does not, and how many jumpers lie together', () => {
  expect(labelWords({ ...homeRun, kind: 'return' }, 'to').cable).toBe('Return: Home run 20 m');
  expect(labelWords({ ...homeRun, kind: 'data-jumper', lengthClass: 'Jumper 1 m', count: 11 }, 'to').cable).toBe(
    'Data jumpers: 11 × Jumper 1 m',
  );
});

test('labelWords leaves no sign that is not printed', () => {
  expect(labelWords({ ...homeRun, lengthClass: 'Home\u200brun\t電 20 m' }, 'to').cable).toBe(
    'Homerun ◊ 20 m'.replace('Homerun', 'Home run: Homerun'),
  );
});
