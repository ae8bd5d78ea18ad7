import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { pictureChapter } from '../../../src/calc/picture/picture-chapter';
import { samplePlan } from '../../arbitraries/sample-plans';

const plan = samplePlan('flat');
const { surfaces } = createEvaluator().evaluate(plan);

test('pictureChapter keeps its figures when only the light of a panel changes, and looks at its refresh again', () => {
  let computed = 0;
  const chapter = pictureChapter(() => {
    computed++;
  });
  const { panels } = plan.catalogue;
  const first = chapter(plan.picture, surfaces, panels);
  expect(chapter(plan.picture, surfaces, panels)).toBe(first);
  const slow = panels.map((panel) => ({ ...panel, light: { ...panel.light, refreshHz: 1 } }));
  const later = chapter(plan.picture, surfaces, slow);
  expect(later.results).toBe(first.results);
  expect(later.checks.some(({ id, severity }) => id.startsWith('picture.refresh.') && severity === 'watch')).toBe(true);
  expect(computed).toBe(1);
});

test('pictureChapter does not look at a price', () => {
  const chapter = pictureChapter(() => {});
  const { panels } = plan.catalogue;
  const dearer = panels.map((panel) => ({ ...panel, purchase: { ...panel.purchase, price: 1 } }));
  expect(chapter(plan.picture, surfaces, dearer)).toBe(chapter(plan.picture, surfaces, panels));
});
