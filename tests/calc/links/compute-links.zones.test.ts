import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import type { Feed } from '../../../src/plan/feed';
import { sampleNames, samplePlan } from '../../arbitraries/sample-plans';

const { evaluate } = createEvaluator();
const timings: readonly Feed['timing'][] = ['reduced-2', 'reduced-1', 'full', 'container'];

test.each(sampleNames)('computeLinks of sample %s asks as much of a link as the zones ask of an input', (name) => {
  const plan = samplePlan(name);
  let compared = 0;
  for (const timing of timings) {
    const { zones, links } = evaluate({
      ...plan,
      feed: { ...plan.feed, timing, containerId: null, zonesANode: 1, bySurface: [] },
    });
    for (const [i, { canvas, payloadBps }] of links.results.surfaces.entries()) {
      const zone = zones.results.surfaces[i]!;
      if (canvas?.width !== zone.canvasWidth || canvas.height !== zone.canvasHeight) continue;
      expect(payloadBps).toBe(zone.inputBps);
      compared++;
    }
  }
  expect(compared).toBeGreaterThan(0);
});
