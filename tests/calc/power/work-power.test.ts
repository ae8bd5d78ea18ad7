import fc from 'fast-check';
import { evaluate } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { computePower, type PowerInputs } from '../../../src/calc/power/compute-power';
import { workPower } from '../../../src/calc/power/work-power';
import type { Power } from '../../../src/plan/power';
import {
  distroOf,
  powerOf,
  powerPanel,
  surfaceOf,
  surfaceSet,
  surfaceSetArbitrary,
} from '../../arbitraries/power-surfaces';

const panels = [powerPanel('p', { chainA: 10 }), powerPanel('q', { fullWhiteW: 110, powerFactor: 0.9 })];
const inputsOf = (surfaces: PowerInputs['surfaces'], power: Partial<Power> = {}): PowerInputs => ({
  power: powerOf({ distroId: 'distro', includesSignal: true, ...power }),
  distros: [distroOf({ circuits: 5 })],
  panels,
  surfaces,
  signalLoadW: 2500,
});
const wall = surfaceSet(surfaceOf({ columns: 20, rows: 12, rowPanel: (r) => (r > 9 ? 'q' : 'p') }));
const supplies: readonly Partial<Power>[] = (['wye', 'split-phase'] as const).flatMap((kind) =>
  (['leg-to-neutral', 'leg-to-leg'] as const).map((connection) => ({
    supply: { kind, legToNeutralV: 120, lowestShare: 0.95 },
    connection,
  })),
);

function expectPrintedValues(inputs: PowerInputs) {
  for (const step of workPower(inputs, computePower(inputs))) {
    const value: unknown = evaluate(step.expression, { ...step.numbers });
    const apart = Math.abs((value as number) - step.value);
    expect(apart, `${step.figure}: ${step.symbol}`).toBeLessThanOrEqual(1e-9 * Math.abs(step.value));
  }
}

describe('workPower', () => {
  it.each(supplies)('prints lines that a maths library evaluates to their value: %o', (power) => {
    expectPrintedValues(inputsOf(wall, power));
  });

  it('does so for stages of any form, mixed panels and holes included', () => {
    fc.assert(
      fc.property(surfaceSetArbitrary, fc.constantFrom(...supplies), (set, power) => {
        expectPrintedValues(inputsOf(set, power));
      }),
    );
  });

  it('ends in the headline figures', () => {
    const inputs = inputsOf(wall);
    const results = computePower(inputs);
    const steps = workPower(inputs, results);
    const value = (figure: string) => steps.findLast((step) => step.figure.startsWith(figure))?.value;
    expect(value('worst leg, L')).toBe(results.worstLegA);
    expect(value('worst leg, typical')).toBe(Math.max(...results.typicalLegs.slice(0, 3).map((l) => l.currentA)));
    expect(value('neutral')).toBe(results.neutralA);
    expect(value('power at full white')).toBe(results.maxW);
    expect(value('typical power')).toBe(results.typicalW);
    expect(value('power at black')).toBe(results.blackW);
    expect(value('panels a circuit, Panel p')).toBe(results.panelsACircuit[0]!.panels);
  });

  it('of an empty stage works out watts only', () => {
    const inputs = inputsOf(surfaceSet());
    expect(workPower(inputs, computePower(inputs)).map((step) => step.unit)).toEqual(['W', 'W', 'W']);
  });
});
