import { describe, expect, test } from 'vitest';
import { addDelays } from '../../../src/calc/nodes/add-delays';
import { checkDelays } from '../../../src/calc/nodes/check-delays';
import { type Delay, defaultDelay } from '../../../src/plan/delay';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';
import { plainMode } from './plain-nodes';

const bands = [{ type: plainType(100), rows: 2 }];
const surfaces = setOf(
  plainSurface({ letter: 'A', columns: 2, bands }),
  plainSurface({ letter: 'B', columns: 2, bands }),
);
const checks = (delay: Delay, rateB = 25) =>
  checkDelays(
    delay,
    surfaces,
    addDelays(delay.steps, [
      { surfaceId: 'a', mode: plainMode(25) },
      { surfaceId: 'b', mode: plainMode(rateB) },
    ]),
  );
const of = (delay: Delay, id: string, rateB?: number) => checks(delay, rateB).find((check) => check.id === id);

describe('checkDelays', () => {
  test('reads not stated where there are no steps', () => {
    expect(of({ steps: [], mostMs: 100 }, 'nodes.delay.A')).toMatchObject({ severity: 'offer', measured: null });
  });

  // Usual steps (common practice, no source): at 25 a second 8 + 5 x 40 + 1 = 209 ms.
  test('holds each surface against what the shoot bears', () => {
    const at = (mostMs: number | null) => of({ ...defaultDelay, mostMs }, 'nodes.delay.A');
    expect(at(null)).toMatchObject({ severity: 'offer', measured: 0.209, limit: null });
    expect(at(209)).toMatchObject({ severity: 'pass', measured: 0.209, limit: 0.209 });
    expect(at(208)).toMatchObject({ severity: 'watch', measured: 0.209, limit: 0.208 });
    expect(at(208)?.values?.frames?.value).toBeCloseTo(209 / 40, 12);
  });

  test('watches two surfaces that differ, and the fix holds the quicker one back', () => {
    expect(of(defaultDelay, 'nodes.delays-together')).toMatchObject({ severity: 'pass', measured: 0 });
    // At 50 a second B takes 8 + 5 x 20 + 1 = 109 ms: 100 ms less.
    const check = of(defaultDelay, 'nodes.delays-together', 50);
    expect(check).toMatchObject({ severity: 'watch', limit: 0, where: [{ kind: 'surface', name: 'B' }] });
    expect(check?.measured).toBeCloseTo(0.1, 12);
    const { fields } = check!.fix!.command.args as unknown as { fields: { value: Delay['steps'] }[] };
    const steps = fields[0]!.value;
    expect(steps.at(-1)).toMatchObject({ id: 'hold-1', ms: 100, surfaceIds: ['b'] });
    expect(of({ ...defaultDelay, steps }, 'nodes.delays-together', 50)?.severity).toBe('pass');
    // A second time: the id that is taken is not given again.
    const held = { ...defaultDelay, steps: steps.map((step) => (step.id === 'hold-1' ? { ...step, ms: 90 } : step)) };
    const again = of(held, 'nodes.delays-together', 50)!.fix!.command.args as unknown as typeof check & {
      fields: { value: Delay['steps'] }[];
    };
    expect(again.fields[0]!.value.at(-1)).toMatchObject({ id: 'hold-2', ms: 10 });
  });

  test('offers no step more than the plan takes', () => {
    const step = (i: number) => ({ id: `s${i}`, name: 'Step', frames: 1, ms: 0, surfaceIds: null });
    const full = { steps: Array.from({ length: 50 }, (_, i) => step(i)), mostMs: null };
    const check = of(full, 'nodes.delays-together', 50);
    expect(check?.severity).toBe('watch');
    expect(check?.fix).toBeUndefined();
  });

  test('points at steps for surfaces that are not there, and drops them', () => {
    const steps = [{ id: 'x', name: 'X', frames: 1, ms: 0, surfaceIds: ['gone'] }, ...defaultDelay.steps];
    expect(of({ steps, mostMs: null }, 'nodes.delay-names')).toMatchObject({
      severity: 'watch',
      measured: 1,
      where: [{ kind: 'field', name: 'delay.steps[0].surfaceIds' }],
      fix: { command: { args: { fields: [{ value: defaultDelay.steps }] } } },
    });
  });
});
