import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { planFingerprint } from '../../src/files/plan-fingerprint';
import { planContentOf } from '../../src/plan/plan-content-of';
import { samplePlan } from '../arbitraries/sample-plans';

const plan = samplePlan('flat');

test('planFingerprint is the beginning of the SHA-256 of the content, by another program', () => {
  const whole = createHash('sha256')
    .update(JSON.stringify(planContentOf(plan)))
    .digest('hex');
  expect(planFingerprint(plan)).toBe(whole.slice(0, 8));
});

test('planFingerprint follows what is planned, and neither the file nor the order of its keys', () => {
  const tick = { step: 'stands', of: 'column', name: 'C1', done: true, who: 'Ann', atMs: 1 } as const;
  const keptElsewhere = { ...plan, id: 'other', log: { ticks: [tick] } };
  expect(planFingerprint(keptElsewhere)).toBe(planFingerprint(plan));
  const turned = { ...plan, wish: Object.fromEntries(Object.entries(plan.wish).reverse()) as typeof plan.wish };
  expect(planFingerprint(turned)).toBe(planFingerprint(plan));
  expect(planFingerprint({ ...plan, name: `${plan.name} 2` })).not.toBe(planFingerprint(plan));
});
