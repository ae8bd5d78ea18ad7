import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parsePlan } from '../../src/plan/parse-plan';
import type { Plan } from '../../src/plan/plan';
import { serialisePlan } from '../../src/plan/serialise-plan';
import { anyPlan } from '../arbitraries/plan';
import { samplePlan, sampleText } from './sample-plan';

test('saving and opening is the identity, and the text the same to the byte', () => {
  for (const size of ['small', 'any'] as const) {
    fc.assert(
      fc.property(anyPlan(size), (plan) => {
        const text = serialisePlan(plan);
        const opened = parsePlan(text);
        expect(opened).toEqual({ plan });
        expect(serialisePlan((opened as { plan: Plan }).plan)).toBe(text);
      }),
      { numRuns: 150 },
    );
  }
});

test.each(['horseshoe', 'ring-feet', 'flat', 'version-3'] as const)('%s is saved as it stands, to the byte', (name) => {
  expect(serialisePlan(samplePlan(name))).toBe(sampleText(name));
});

/** The same record with the keys of every record in the opposite order. */
function turned(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(turned);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, part]) => [key, turned(part)]),
  );
}

test('serialisePlan does not depend on the order in which fields were made', () => {
  const plan = samplePlan('version-2');
  expect(Object.keys(turned(plan) as Plan)[0]).toBe('log');
  expect(serialisePlan(turned(plan) as Plan)).toBe(serialisePlan(plan));
});

test('serialisePlan ends in one line feed and indents by two', () => {
  expect(serialisePlan(samplePlan('flat'))).toMatch(/^\{\n {2}"format": "voussoir-plan",\n[^\t\r]*\n\}\n$/);
});

test('serialisePlan throws for what is no valid plan', () => {
  expect(() => serialisePlan({ ...samplePlan('flat'), currency: 'euro' })).toThrow();
});
