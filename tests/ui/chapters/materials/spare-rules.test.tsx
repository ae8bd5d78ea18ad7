import { produce } from 'immer';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { createEvaluator } from '../../../../src/calc/evaluate';
import { SpareRules } from '../../../../src/ui/chapters/materials/SpareRules';
import { BenchContext } from '../../../../src/ui/state/bench-context';
import { samplePlan } from '../../../arbitraries/sample-plans';
import { fakeBench } from '../../state/fake-bench';

const markup = (byItem: readonly { itemId: string; share: number; least: number }[]) => {
  const plan = produce(samplePlan('flat'), (draft) => {
    draft.materials.byItem = [...byItem];
  });
  return renderToStaticMarkup(
    <BenchContext value={fakeBench({}, plan)}>
      <SpareRules lines={createEvaluator().evaluate(plan).materials.results.lines} />
    </BenchContext>,
  );
};

test('every item of the bill but its cases can be spared apart', () => {
  const text = markup([]);
  expect(text).toContain('<option value="osier-25">Osier 2.5 (invented)</option>');
  expect(text).toContain('Data, home run (invented)</option>');
  expect(text).not.toContain('/case');
  expect(text).not.toContain('as the rest');
});

test('an item with a rule of its own has fields for it and is chosen no more', () => {
  const text = markup([{ itemId: 'osier-25', share: 0.05, least: 4 }]);
  expect(text).toContain('Spares of Osier 2.5 (invented)');
  expect(text).toContain('Spare Osier 2.5 (invented) as the rest');
  expect(text).toContain('value="4"');
  expect(text).not.toContain('<option value="osier-25">');
});
