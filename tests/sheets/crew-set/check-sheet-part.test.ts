import { expect, test } from 'vitest';
import { cautions } from '../../../src/calc/cautions';
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

test('checkSheetPart carries the caution of electricity, since circuits are signed on it', () => {
  const { evaluation } = evaluated(samplePlan('flat'));
  expect(checkSheetPart(evaluation)!.sheets.map(({ caution }) => caution)).toEqual([cautions.electricity]);
});

test('checkSheetPart of nothing is none', () => {
  expect(checkSheetPart(evaluated(emptyPlan({ id: 'p', name: '', lengths: 'metric' })).evaluation)).toBeNull();
});
