import { expect, test } from 'vitest';
import { usualStep } from '../../../src/ui/widgets/usual-step';

const metric = { lengths: 'metric', locale: 'en-GB', currency: 'EUR' } as const;
const feet = { ...metric, lengths: 'feet' } as const;

test.each([
  ['mm', metric, undefined, 100],
  ['mm', metric, 'mm', 1],
  ['mm', feet, undefined, 25.4],
  ['mm', feet, 'mm', 1],
  ['share', metric, undefined, 0.01],
  ['A', metric, undefined, 1],
] as const)('usualStep of %s', (unit, options, plain, step) => {
  expect(usualStep(unit, options, plain)).toBe(step);
});
