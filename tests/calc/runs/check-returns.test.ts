import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { applyCommand } from '../../../src/plan/commands';
import type { Plan } from '../../../src/plan/plan';
import type { Returns } from '../../../src/plan/signal';
import { samplePlan } from '../../plan/sample-plan';

const { evaluate } = createEvaluator();
const withReturns = (returns: Returns, plan: Plan = samplePlan('horseshoe')): Plan => ({
  ...plan,
  signal: { ...plan.signal, returns, bySurface: plan.signal.bySurface.map((own) => ({ ...own, returns: null })) },
});
const checksOf = (plan: Plan, start: string) => evaluate(plan).checks.filter(({ id }) => id.startsWith(start));

test('checkReturns says nothing where nothing returns', () => {
  expect(checksOf(withReturns('none'), 'runs.returns')).toEqual([]);
});

test('checkReturns passes returns on another breakout, and every run has a port of another breakout', () => {
  const plan = withReturns('breakout');
  expect(checksOf(plan, 'runs.returns.A')).toMatchObject([{ severity: 'pass', measured: 0 }]);
  const { runs, portsUsed } = evaluate(plan).runs.results;
  expect(portsUsed).toBe(2 * runs.length);
  const wall = runs.filter(({ surfaceId }) => surfaceId === plan.walls[0]!.id);
  const box = (port: string) => port.slice(0, port.lastIndexOf('-'));
  for (const { port, returnPort } of wall) expect(box(returnPort!)).not.toBe(box(port));
});

test('checkReturns names runs whose return has no other breakout, and its fix asks for a second port instead', () => {
  const flat = samplePlan('flat');
  const direct = { kind: 'direct' as const, ports: 64 };
  const processors = flat.catalogue.processors.map((processor) => ({ ...processor, outlets: direct }));
  const plan = withReturns('breakout', { ...flat, catalogue: { ...flat.catalogue, processors } });
  const [check] = checksOf(plan, 'runs.returns.');
  expect(check).toMatchObject({ severity: 'watch', limit: 0 });
  expect(check!.where.map(({ kind }) => kind)).toEqual(Array(check!.measured!).fill('port'));
  const outcome = applyCommand(plan, check!.fix!.command);
  expect('plan' in outcome && checksOf(outcome.plan, 'runs.returns.')).toMatchObject([{ severity: 'pass' }]);
});

test('checkReturns watches the drop of every return from above reach, by the lower edge of the last panel', () => {
  const plan = withReturns('breakout');
  const { runs, order } = evaluate(plan).runs.results;
  const { surfaces } = evaluate(plan);
  const [wall] = surfaces.surfaces;
  const own = runs.filter(({ surfaceId }) => surfaceId === wall!.surfaceId);
  for (const { start, count, exitHeightMm } of own) {
    const last = order[start + count - 1]!;
    const type = wall!.types[wall!.type[last]!]!;
    expect(exitHeightMm).toBeCloseTo(wall!.zMm[last]! - type.heightMm / 2, 3);
  }
  const high = own.filter(({ exitHeightMm }) => exitHeightMm > plan.signal.reachMm).length;
  const [check] = checksOf(plan, 'runs.returns-reach.');
  expect(check).toMatchObject({ severity: 'watch', limit: plan.signal.reachMm, values: { high: { value: high } } });
  expect(high).toBeGreaterThan(0);
  expect(high).toBeLessThan(own.length);
  // On a ceiling, wired from above, nobody reaches from the floor.
  expect(checksOf(plan, 'runs.returns-reach.')).toHaveLength(1);
});
