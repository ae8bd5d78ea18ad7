import { expect, test } from 'vitest';
import { culpritKinds } from '../../../src/calc/faults/culprit';
import { culpritsOf } from '../../../src/calc/faults/fault-model';
import { culpritOfSelection } from '../../../src/ui/state/culprit-of-selection';
import { faultModelOf } from '../../../src/ui/state/fault-model-of';
import { findSelection } from '../../../src/ui/state/find-selection';
import { selectionOfCulprit } from '../../../src/ui/state/selection-of-culprit';
import { fakeEvaluation, somePlan } from './fake-bench';

const plain = fakeEvaluation(somePlan);
const { runs } = plain.runs.results;
// The first run comes back to a port of a processor that has no zone.
const back = runs.map((run, i) => ({ ...run, returnPort: i === 0 ? '9A-01' : null }));
const evaluation = { ...plain, runs: { ...plain.runs, results: { ...plain.runs.results, runs: back } } };

test.each(culpritKinds)(
  'every part of kind %s can be picked, is found again by its name, and fails as what it is',
  (kind) => {
    for (const culprit of culpritsOf(faultModelOf(evaluation), kind)) {
      const selection = selectionOfCulprit(evaluation, culprit);
      expect(culpritOfSelection(evaluation, selection)).toEqual(culprit);
      expect(findSelection(evaluation, selection.name)).toEqual(selection);
    }
  },
);

test('a port is picked as its run and a processor as its zone, but for those that only take a return', () => {
  const kindOf = (name: string) => findSelection(evaluation, name)?.kind;
  expect(['1A-01', 'processor 1'].map(kindOf)).toEqual(['run', 'zone']);
  expect(['9A-01', 'processor 9', 'N1', 'distro 1'].map(kindOf)).toEqual(['part', 'part', 'part', 'part']);
});

test('a column is no part that fails, nor is what is gone', () => {
  expect(culpritOfSelection(evaluation, { kind: 'column', surfaceId: 'w', column: 1, name: 'C1' })).toBeNull();
  expect(culpritOfSelection(evaluation, { kind: 'run', index: 999, name: 'x' })).toBeNull();
  expect(culpritOfSelection(evaluation, { kind: 'panel', index: 999, name: 'x' })).toBeNull();
});
