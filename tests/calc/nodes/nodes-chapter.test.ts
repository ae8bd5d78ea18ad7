import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { nodesChapter } from '../../../src/calc/nodes/nodes-chapter';
import { samplePlan } from '../../arbitraries/sample-plans';

const plan = samplePlan('flat');
const { surfaces, picture, zones } = createEvaluator().evaluate(plan);
const ground = { surfaces, picture: picture.results, zones: zones.results };

test('nodesChapter computes once for the same givens, and anew for others', () => {
  let computed = 0;
  const chapter = nodesChapter(() => {
    computed++;
  });
  const first = chapter(plan, ground);
  expect(first.results.nodes.length).toBeGreaterThan(0);
  // What the chapter does not read is another one.
  expect(chapter({ ...plan, feed: { ...plan.feed, linkId: 'some' }, wish: { ...plan.wish, budget: 1 } }, ground)).toBe(
    first,
  );
  expect(computed).toBe(1);
  expect(chapter({ ...plan, feed: { ...plan.feed, spareNodes: 7 } }, ground).results.spareNodes).toBe(7);
  expect(computed).toBe(2);
});

test('nodesChapter leaves the canvases as they are when delay, sync or addresses change', () => {
  const chapter = nodesChapter(() => {});
  const first = chapter(plan, ground);
  const later = chapter({ ...plan, sync: { ...plan.sync, trackers: 9 }, delay: { steps: [], mostMs: 1 } }, ground);
  expect(later).not.toBe(first);
  expect(later.results.nodes).toBe(first.results.nodes);
});
