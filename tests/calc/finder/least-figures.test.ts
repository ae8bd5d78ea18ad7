import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import type { Build } from '../../../src/calc/finder/build';
import { exactFigures } from '../../../src/calc/finder/exact-figures';
import { findBuilds } from '../../../src/calc/finder/find-builds';
import { leastFigures } from '../../../src/calc/finder/least-figures';
import { emptyPlan } from '../../../src/plan/empty-plan';
import type { Plan } from '../../../src/plan/plan';
import { sampleNames, samplePlan } from '../../arbitraries/sample-plans';

const empty = emptyPlan({ id: 'wish', name: 'Wish', lengths: 'metric' });

/** The best build of each panel and its next in other joints or rows. */
function someBuilds(plan: Plan): readonly Build[] {
  return findBuilds(plan).flatMap(({ builds }) => builds.slice(0, 2));
}

function expectBoundsBelow(plan: Plan): void {
  const { evaluate } = createEvaluator();
  const builds = someBuilds(plan);
  expect(builds.length).toBeGreaterThan(2);
  for (const build of builds) {
    const least = leastFigures(plan, build)!;
    const exact = exactFigures(plan, build, evaluate)!;
    if (exact.processors !== null) expect(least.processors, build.key).toBeLessThanOrEqual(exact.processors);
    if (exact.ports !== null) expect(least.ports, build.key).toBeLessThanOrEqual(exact.ports);
    if (exact.worstLegA !== null) expect(least.worstLegA, build.key).toBeLessThanOrEqual(exact.worstLegA + 1e-9);
    // A bound that says nothing would pass too.
    expect(least.worstLegA).toBeGreaterThan(0);
    if (exact.ports !== null) expect(least.ports).toBeGreaterThan(0);
  }
}

test.each(sampleNames)('leastFigures are no more than the exact ones, over the catalogue of %s', (name) => {
  expectBoundsBelow(samplePlan(name));
});

test.each([
  ['leg to leg', { connection: 'leg-to-leg' }],
  ['split-phase', { supply: { kind: 'split-phase', legToNeutralV: 120, lowestShare: 1 }, connection: 'leg-to-leg' }],
  ['split-phase to neutral', { supply: { kind: 'split-phase', legToNeutralV: 120, lowestShare: 0.9 } }],
] as const)('leastFigures are no more than the exact ones on %s', (_name, power) => {
  const plan = samplePlan('flat');
  expectBoundsBelow({ ...plan, power: { ...plan.power, ...power } });
});

test('leastFigures of a flat wall are those worked by hand', () => {
  // 12 x 6 panels of 200 x 200 pixels: 2,880,000 pixels. A port of 650,000 with 0.1 free carries 585,000: 14 panels; 72 / 14 -> 6.
  // A processor of 1,500,000 pixels: 2 of them; of 4 ports: 2. Full white 72 x 150 W at 0.9 x 230 V and a power factor of 1:
  // 10,800 / 207 = 52.174 A, over three legs 17.391 A.
  const [panel] = empty.catalogue.panels;
  const [processor] = empty.catalogue.processors;
  const plan: Plan = {
    ...empty,
    wish: { ...empty.wish, wall: { form: 'flat', acrossMm: 6000, heightMm: 3000, openingMm: null } },
    picture: { ...empty.picture, base: { rate: { frames: 60, seconds: 1 }, depthBits: 8, pictures: 1 } },
    signal: { ...empty.signal, freeShare: 0.1, panelsMost: null },
    catalogue: {
      ...empty.catalogue,
      panels: [
        {
          ...panel!,
          size: { ...panel!.size, widthMm: 500, heightMm: 500 },
          pixels: { wide: 200, high: 200 },
          data: { ...panel!.data, chainPanels: null, drivenBy: [{ processorId: processor!.id, portPixels: null }] },
          power: { ...panel!.power, fullWhiteW: 150, powerFactor: 1 },
        },
      ],
      processors: [
        {
          ...processor!,
          canvas: { pixels: 1_500_000, widest: 8192, highest: 8192, inputGbps: null },
          port: { ...processor!.port, lineMbps: 1000, sheetPixels: 650_000 },
          outlets: { kind: 'direct', ports: 4 },
        },
      ],
    },
  };
  const [build] = findBuilds(plan)[0]!.builds;
  expect(build).toMatchObject({ columns: 12, rows: 6, panels: 72 });
  const least = leastFigures(plan, build!)!;
  expect(least).toMatchObject({ processors: 2, ports: 6 });
  expect(least.worstLegA).toBeCloseTo(17.391, 3);
});

test('leastFigures count no ports where nothing drives the panel', () => {
  const [first] = empty.catalogue.panels;
  const plan: Plan = {
    ...empty,
    wish: { ...empty.wish, wall: { form: 'flat', acrossMm: 6000, heightMm: 3000, openingMm: null } },
    catalogue: { ...empty.catalogue, panels: [{ ...first!, data: { ...first!.data, drivenBy: [] } }] },
    signal: { ...empty.signal, processorId: null },
  };
  const [build] = findBuilds(plan)[0]!.builds;
  expect(leastFigures(plan, build!)).toMatchObject({ processors: 0, ports: 0 });
  expect(exactFigures(plan, build!, createEvaluator().evaluate)).toMatchObject({ processors: null, ports: null });
});
