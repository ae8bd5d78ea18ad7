import { expect, test } from 'vitest';
import { cautions } from '../../../src/calc/cautions';
import { emptyPlan } from '../../../src/plan/empty-plan';
import { commissioningPart } from '../../../src/sheets/crew-set/commissioning-part';
import { samplePlan } from '../../arbitraries/sample-plans';
import { cells } from '../cells';
import { evaluated, options, tablesOf } from './sample-set';

test('commissioningPart has a table for each step, with room to measure and to sign', () => {
  const { plan, evaluation } = evaluated(samplePlan('flat'));
  const part = commissioningPart(plan, evaluation, options.display)!;
  const tables = tablesOf(part);
  expect(tables[0]!.title).toBe('1 Survey and seams');
  for (const { boxes } of tables) expect(boxes).toEqual(['Measured', 'Signed']);
  expect(cells(tables[1]!.schedule, 0)).toEqual({
    what: 'Bonding of frames, truss and racks',
    wanted: 'an electrician decides',
  });
  expect(part.sheets[0]!.caution).toBe(cautions.general);
});

test('commissioningPart of nothing is none', () => {
  const { plan, evaluation } = evaluated(emptyPlan({ id: 'p', name: '', lengths: 'metric' }));
  expect(commissioningPart(plan, evaluation, options.display)).toBeNull();
});
