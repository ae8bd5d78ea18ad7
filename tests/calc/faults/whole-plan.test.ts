import { expect, it } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { culpritKinds } from '../../../src/calc/faults/culprit';
import { darkBy } from '../../../src/calc/faults/dark-by';
import { culpritsOf, makeFaultModel } from '../../../src/calc/faults/fault-model';
import { rankSuspects } from '../../../src/calc/faults/rank-suspects';
import { samplePlan } from '../../arbitraries/sample-plans';

function modelOf(returns: 'none' | 'port') {
  const plan = samplePlan('flat');
  const { surfaces, zones, runs, nodes, power, faults } = createEvaluator().evaluate({
    ...plan,
    signal: { ...plan.signal, returns },
  });
  return makeFaultModel({
    surfaces,
    zones: zones.results.zones,
    runs: runs.results,
    nodes: nodes.results,
    power: power.results,
    passes: faults.results.passes,
  });
}

it('in a whole plan a cut jumper or home run loses nothing with a return to a second port, and something without', () => {
  const cables = (model: ReturnType<typeof modelOf>) =>
    (['jumper', 'home-run', 'port'] as const).flatMap((kind) => [...culpritsOf(model, kind)]);
  const returned = modelOf('port');
  expect(returned.returnOf.every((outlet) => outlet >= 0)).toBe(true);
  expect(cables(returned).filter((culprit) => darkBy(returned, culprit).length > 0)).toEqual([]);
  const plain = modelOf('none');
  expect(cables(plain).filter((culprit) => darkBy(plain, culprit).length === 0)).toEqual([]);
});

it('in a whole plan every part that darkens a panel is in the first group of suspects of what it darkens', () => {
  const model = modelOf('none');
  const missed = culpritKinds
    .flatMap((kind) => [...culpritsOf(model, kind)])
    .filter((planted) => {
      const dark = darkBy(model, planted);
      const [first] = rankSuspects(model, dark);
      const isNamed = first?.culprits.some(({ kind, index }) => kind === planted.kind && index === planted.index);
      return dark.length > 0 && !isNamed;
    });
  expect(missed).toEqual([]);
});
