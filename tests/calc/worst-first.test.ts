import { expect, test } from 'vitest';
import type { Chapter, Check, Severity } from '../../src/calc/chapter';
import { worstFirst } from '../../src/calc/worst-first';

const check = (id: string, severity: Severity): Check => ({
  id,
  chapter: 'walls',
  severity,
  measured: null,
  limit: null,
  unit: 'count',
  where: [],
  sentence: '',
});
const chapter = (...checks: Check[]): Chapter<null> => ({ results: null, checks, working: [] });

test('worstFirst sorts by severity and keeps the order of chapters within it', () => {
  const first = chapter(check('a', 'pass'), check('b', 'stop'), check('c', 'watch'));
  const second = chapter(check('d', 'stop'), check('e', 'offer'), check('f', 'watch'));
  expect(worstFirst([first, second]).map(({ id }) => id)).toEqual(['b', 'd', 'c', 'f', 'e', 'a']);
  expect(worstFirst([])).toEqual([]);
});
