import { expect, test } from 'vitest';
import { createEvaluator } from '../../../../src/calc/evaluate';
import {
  freeShareSteps,
  panelsMostSteps,
  reachSteps,
  wiringSteps,
  zoneWidthSteps,
} from '../../../../src/calc/levers/steps/signal-steps';
import type { Plan } from '../../../../src/plan/plan';
import { samplePlan } from '../../../arbitraries/sample-plans';

const plan = samplePlan('flat');
const evaluation = createEvaluator().evaluate(plan);
const withSignal = (signal: Partial<Plan['signal']>): Plan => ({ ...plan, signal: { ...plan.signal, ...signal } });

test('freeShareSteps go down percent by percent to nothing free', () => {
  expect(freeShareSteps(withSignal({ freeShare: 0.03 })).map(({ to }) => to.value)).toEqual([0.02, 0.01, 0]);
  expect(freeShareSteps(withSignal({ freeShare: 0 }))).toEqual([]);
});

test('wiringSteps offer fewest ports, once', () => {
  expect(wiringSteps(withSignal({ priority: 'repeats' }), evaluation)).toHaveLength(1);
  expect(wiringSteps(withSignal({ priority: 'fewest-ports' }), evaluation)).toEqual([]);
});

test('reachSteps are the lower edges of rows above reach, lowest first', () => {
  const edges = reachSteps(withSignal({ reachMm: 0 }), evaluation).map(({ to }) => to.value);
  expect(edges).toEqual([...edges].sort((a, b) => a - b));
  expect(edges.every((edge) => edge > 0)).toBe(true);
});

test("panelsMostSteps raise the user's own limit, and there are none without one", () => {
  expect(panelsMostSteps(withSignal({ panelsMost: null }), evaluation)).toEqual([]);
  expect(panelsMostSteps(withSignal({ panelsMost: 4 }), evaluation)[0]!.to.value).toBe(5);
});

test('zoneWidthSteps lift limits of zones that a surface has, and there are none without', () => {
  expect(zoneWidthSteps(withSignal({ bySurface: [] }))).toEqual([]);
  const own = { surfaceId: 'a', processorId: 'b', nodeId: null, zoneColumnsMost: 4, returns: null, zonesUp: null };
  expect(zoneWidthSteps(withSignal({ bySurface: [own] }))).toHaveLength(1);
});
