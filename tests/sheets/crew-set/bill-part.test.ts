import { expect, test } from 'vitest';
import { billPart } from '../../../src/sheets/crew-set/bill-part';
import { samplePlan } from '../../arbitraries/sample-plans';
import { evaluated, tablesOf } from './sample-set';

const { results } = evaluated(samplePlan('flat')).evaluation.materials;

test('billPart has every line of the bill, without what it costs', () => {
  const { schedule } = tablesOf(billPart(results)!)[0]!;
  expect(schedule.count).toBe(results.lines.length);
  const keys = schedule.columns.map(({ key }) => key);
  expect(keys).toContain('needed');
  expect(keys.filter((key) => /price|lead/i.test(key))).toEqual([]);
});

test('billPart of a plan that needs nothing is none', () => {
  expect(billPart({ ...results, lines: results.lines.map((line) => ({ ...line, needed: 0 })) })).toBeNull();
});
