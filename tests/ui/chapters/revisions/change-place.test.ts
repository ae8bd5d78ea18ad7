import { expect, test } from 'vitest';
import { createEvaluator } from '../../../../src/calc/evaluate';
import { changePlace } from '../../../../src/ui/chapters/revisions/change-place';
import { findSelection } from '../../../../src/ui/state/find-selection';
import { samplePlan } from '../../../arbitraries/sample-plans';

test('changePlace names what the bench finds', () => {
  const evaluation = createEvaluator().evaluate(samplePlan('horseshoe'));
  const port = evaluation.runs.results.runs[0]!.port;
  for (const [what, name] of [
    ['panel', 'A C1 R1'],
    ['port', port],
    ['trunk', port.split('-')[0]!],
    ['processor', '1'],
    ['node', 'N1'],
    ['circuit', 'D1-1'],
  ] as const) {
    const place = changePlace({ kind: 'moved', what, name });
    expect(place && findSelection(evaluation, place), `${what} ${name}`).not.toBeNull();
  }
});

test('changePlace has none for what is gone, and for what stands nowhere', () => {
  expect(changePlace({ kind: 'removed', what: 'panel', name: 'A C1 R1' })).toBeNull();
  for (const what of ['figure', 'check', 'item'] as const) {
    expect(changePlace({ kind: 'added', what, name: 'Panels' })).toBeNull();
  }
});
