import { expect, test } from 'vitest';
import { workLinks } from '../../../src/calc/links/work-links';
import { videoLinks } from '../../../src/calc/tables/video-links';
import { expectStepsHold } from '../ports/expect-steps-hold';
import { mode } from '../ports/plain-items';
import { linked, type PlainSending } from './plain-links';

function work(sending: PlainSending, rest: Parameters<typeof linked>[1] = {}) {
  const { inputs, results } = linked([sending], rest);
  return workLinks(inputs, results);
}

test.each(videoLinks.map(({ id }) => id))(
  'workLinks prints what is left of %s as a maths library finds it',
  (linkId) => {
    const steps = work({ canvases: [{ width: 1907, height: 1080 }], served: [mode(30_000, 10, 1, 1001)] }, { linkId });
    expectStepsHold(steps);
    expect(steps.at(-1)).toMatchObject({ figure: 'left of the link of A', symbol: 'left' });
  },
);

test('workLinks works SDI out at the faster rates too', () => {
  for (const frames of [24, 50, 120]) {
    const steps = work(
      { canvases: [{ width: 1920, height: 1080 }], served: [mode(frames)] },
      { linkId: 'sdi-12g-quad' },
    );
    expectStepsHold(steps);
  }
});

test('workLinks prints the timing that is chosen', () => {
  const steps = work({ canvases: [{ width: 1920, height: 1080 }] }, { timing: 'full' });
  expectStepsHold(steps);
  expect(steps.find(({ symbol }) => symbol === 'clock')?.value).toBe(173_000_000);
});

test('workLinks has nothing to print where nothing is sent', () => {
  expect(work({ canvases: [] })).toEqual([]);
});
