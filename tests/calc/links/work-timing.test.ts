import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type TimingChoice, timeCanvas } from '../../../src/calc/links/time-canvas';
import { workTiming } from '../../../src/calc/links/work-timing';
import { expectStepsHold } from '../ports/expect-steps-hold';

const kinds: readonly TimingChoice['timing'][] = ['reduced-2', 'reduced-1', 'full', 'cta', 'container'];

test.each(kinds)('workTiming prints the clock of timing %s as a maths library finds it', (timing) => {
  const steps = workTiming(
    'clock',
    { width: 1920, height: 1080 },
    { frames: 24_000, seconds: 1001 },
    {
      timing,
      containerId: null,
    },
  );
  expectStepsHold(steps);
  expect(steps.at(-1)?.symbol).toBe('clock');
});

test('workTiming of any canvas ends in the clock that timeCanvas has', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 9000 }),
      fc.integer({ min: 1, max: 9000 }),
      fc.constantFrom(...kinds.slice(0, 3)),
      fc.constantFrom({ frames: 24, seconds: 1 }, { frames: 60_000, seconds: 1001 }, { frames: 144, seconds: 1 }),
      (width, height, timing, rate) => {
        const choice = { timing, containerId: null };
        const found = timeCanvas({ width, height }, rate, choice);
        const steps = workTiming('clock', { width, height }, rate, choice);
        expectStepsHold(steps);
        expect(typeof found === 'string' ? null : found.pixelClockHz).toBe(steps.at(-1)?.value);
      },
    ),
    { numRuns: 50 },
  );
});

test('workTiming has nothing to print where there is no timing', () => {
  expect(
    workTiming('clock', { width: 9, height: 9 }, { frames: 60, seconds: 1 }, { timing: 'cta', containerId: null }),
  ).toEqual([]);
});
