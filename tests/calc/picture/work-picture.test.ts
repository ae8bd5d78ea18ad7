import { expect, test } from 'vitest';
import { computePicture } from '../../../src/calc/picture/compute-picture';
import { workPicture } from '../../../src/calc/picture/work-picture';
import { expectStepsHold } from '../ports/expect-steps-hold';
import { mode } from '../ports/plain-items';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';

test('workPicture prints expressions that come to the figures', () => {
  const bands = [
    { type: plainType(200), rows: 2 },
    { type: plainType(100), rows: 1 },
  ];
  const surfaces = setOf(
    plainSurface({ letter: 'A', columns: 5, bands }),
    plainSurface({ letter: 'B', columns: 2, bands }),
  );
  const inputs = { picture: { base: mode(24_000, 10, 2, 1001), bySurface: [], alsoServe: [] }, surfaces };
  const results = computePicture(inputs);
  const steps = workPicture(inputs, results);
  expectStepsHold(steps);
  expect(steps.map(({ figure }) => figure)).toEqual([
    'pixels of A',
    'rate of A',
    'pixels of B',
    'rate of B',
    'pixels of the stage',
    'rate of the stage',
  ]);
  expect(steps.at(-2)?.value).toBe(results.pixels);
});
