import { describe, expect, it } from 'vitest';
import { computePanels } from '../../../src/calc/panels/compute-panels';
import { workPanels } from '../../../src/calc/panels/work-panels';
import { expectStepsHold } from '../ports/expect-steps-hold';
import { plainPanel } from './plain-panel';

describe('workPanels', () => {
  it('prints lines that a maths library evaluates to the figures', () => {
    const panels = [plainPanel('a'), plainPanel('b', { size: { heightMm: 609.6 }, pixels: { wide: 216, high: 256 } })];
    const steps = workPanels(panels, computePanels(panels));
    expectStepsHold(steps);
    expect(steps.find((step) => step.figure === 'pitch of Panel a')!.value).toBe(2.5);
  });
});
