import { evaluate } from 'mathjs';
import { expect } from 'vitest';
import type { Step } from '../../../src/calc/chapter';

/** Evaluates every printed expression with a maths library and compares it with the printed value. */
export function expectStepsHold(steps: readonly Step[]): void {
  expect(steps.length).toBeGreaterThan(0);
  for (const { expression, numbers, value, symbol, figure } of steps) {
    const found: unknown = evaluate(expression, { ...numbers });
    expect(typeof found, `${figure}, ${symbol}`).toBe('number');
    expect(Math.abs((found as number) - value), `${figure}, ${symbol}`).toBeLessThanOrEqual(1e-9 * Math.abs(value));
  }
}
