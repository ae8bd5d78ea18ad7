import { expect, test } from 'vitest';
import { emptyPlan } from '../../src/plan/empty-plan';
import { findItem } from '../../src/plan/find-item';
import { parsePlan } from '../../src/plan/parse-plan';
import { serialisePlan } from '../../src/plan/serialise-plan';

test.each(['metric', 'feet'] as const)(
  'emptyPlan in %s is a valid plan that states nothing and shapes nothing',
  (lengths) => {
    const plan = emptyPlan({ id: 'new', name: 'New stage', lengths });
    expect(parsePlan(serialisePlan(plan))).toEqual({ plan });
    expect(plan).toMatchObject({ name: 'New stage', lengths, walls: [], ceilings: [], handChanges: [] });
    expect(plan.wish.hall).toEqual({ lengthMm: null, widthMm: null, clearHeightMm: null, walkwayMm: 1200 });
  },
);

// The defaults: 60 fps at 10 bit, 10 % free, entries up to 2.1 m, repeats first, spares of 3 % and at least 1.
test('emptyPlan begins with the usual defaults', () => {
  const { picture, signal, power, materials } = emptyPlan({ id: 'new', name: '', lengths: 'metric' });
  expect(picture.base).toEqual({ rate: { frames: 60, seconds: 1 }, depthBits: 10, pictures: 1 });
  expect(signal).toMatchObject({ freeShare: 0.1, reachMm: 2100, priority: 'repeats', panelsMost: null });
  expect(power.circuit.usableShare).toBe(0.8);
  expect(materials).toMatchObject({ spareShare: 0.03, spareLeast: 1 });
});

test('emptyPlan takes the supply that goes with its lengths', () => {
  const metric = emptyPlan({ id: 'new', name: '', lengths: 'metric' });
  const feet = emptyPlan({ id: 'new', name: '', lengths: 'feet' });
  expect(metric).toMatchObject({
    currency: 'EUR',
    power: { supply: { legToNeutralV: 230 }, connection: 'leg-to-neutral' },
  });
  expect(feet).toMatchObject({ currency: 'USD', power: { supply: { legToNeutralV: 120 }, connection: 'leg-to-leg' } });
});

test('emptyPlan chooses equipment that its catalogue has', () => {
  for (const lengths of ['metric', 'feet'] as const) {
    const { catalogue, signal, power } = emptyPlan({ id: 'new', name: '', lengths });
    expect(findItem(catalogue, signal.processorId!)?.list).toBe('processors');
    expect(findItem(catalogue, signal.nodeId!)?.list).toBe('nodes');
    expect(findItem(catalogue, power.distroId!)?.list).toBe('distros');
  }
});
