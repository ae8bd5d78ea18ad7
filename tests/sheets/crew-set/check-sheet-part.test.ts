import { expect, test } from 'vitest';
import { emptyPlan } from '../../../src/plan/empty-plan';
import { checkSheetPart } from '../../../src/sheets/crew-set/check-sheet-part';
import { samplePlan } from '../../arbitraries/sample-plans';
import { evaluated, tablesOf } from './sample-set';

test('checkSheetPart has boxes for every column, port and circuit of the plan, in the order of the work', () => {
  const { evaluation } = evaluated(samplePlan('horseshoe'));
  const tables = tablesOf(checkSheetPart(evaluation)!);
  expect(tables.map(({ schedule }) => schedule.count)).toEqual([
    evaluation.surfaces.surfaces.reduce((sum, { columns }) => sum + columns, 0),
    evaluation.headline.portsUsed,
    evaluation.headline.circuits,
  ]);
  for (const { boxes } of tables) expect(boxes).toEqual(['Stands', 'Wired', 'Powered', 'Tested']);
});

test('checkSheetPart of nothing is none', () => {
  expect(checkSheetPart(evaluated(emptyPlan({ id: 'p', name: '', lengths: 'metric' })).evaluation)).toBeNull();
});
