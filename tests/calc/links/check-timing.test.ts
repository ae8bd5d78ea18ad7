import { expect, test } from 'vitest';
import { checkTiming } from '../../../src/calc/links/check-timing';
import { mode } from '../ports/plain-items';
import { linked, type PlainSending } from './plain-links';

function checks(sending: PlainSending, rest: Parameters<typeof linked>[1] = {}) {
  const { inputs, results } = linked([sending], rest);
  return checkTiming(inputs, results, inputs.surfaces.surfaces[0]!, results.surfaces[0]!);
}
const hd = { width: 1920, height: 1080 };

test('checkTiming passes where the clock brings out the rate asked for', () => {
  const [found] = checks({ canvases: [hd] });
  expect(found).toMatchObject({ id: 'links.rate.A', severity: 'pass', measured: 60, limit: 60 });
});

// CVT with full blanking: 1920 x 1080 at 60 comes out at 59.963 (173.000 MHz / 2576 / 1120), a frame every 27 s.
test('checkTiming says how soon a picture slips whose clock is rounded too far, and takes the least blanking', () => {
  const [found] = checks({ canvases: [hd] }, { timing: 'full' });
  expect(found).toMatchObject({ id: 'links.rate.A', severity: 'watch', limit: 60 });
  expect(found?.measured).toBeCloseTo(59.962844, 6);
  expect(found?.values?.slip?.value).toBeCloseTo(1 / (60 - 59.962844), 2);
  expect(found?.fix?.command.args).toMatchObject({ fields: [{ path: ['feed', 'timing'], value: 'reduced-2' }] });
});

test.each([
  ['CTA-861 has no mode of this size', 'cta', { width: 2808, height: 2808 }, 60],
  ['no mode that holds it runs at a rate', 'cta', hd, 72],
  ['no fixed mode of those allowed holds it', 'container', { width: 10_241, height: 10 }, 60],
] as const)('checkTiming stops and names the reason: %s', (words, timing, canvas, frames) => {
  const [found] = checks({ canvases: [canvas], served: [mode(frames)] }, { timing });
  expect(found).toMatchObject({ id: 'links.timing.A', severity: 'stop', limit: null });
  expect(found?.sentence).toContain(words);
  expect(found?.fix?.command.args).toMatchObject({ fields: [{ path: ['feed', 'timing'], value: 'reduced-2' }] });
});

test('checkTiming lets a fixed mode that is not there, or too small, be the least that holds the canvas', () => {
  for (const containerId of ['cta-0', 'cta-4']) {
    const [found] = checks({ canvases: [hd] }, { timing: 'container', containerId });
    expect(found?.severity).toBe('stop');
    expect(found?.fix?.command.args).toMatchObject({ fields: [{ path: ['feed', 'containerId'], value: null }] });
  }
});

test('checkTiming offers nothing where no blanking is short enough', () => {
  const [found] = checks({ canvases: [{ width: 10, height: 10 }], served: [mode(3000)] });
  expect(found).toMatchObject({ severity: 'stop' });
  expect(found?.fix).toBeUndefined();
});

// Reduced blanking 2 makes 81 x 16 of 1 x 1: 31,104 Hz at 24 Hz, rounded down to 31 kHz, so 23.92 Hz: no better than near.
test('checkTiming offers no blanking under which the rate is as far off', () => {
  const [found] = checks({ canvases: [{ width: 1, height: 1 }], served: [mode(24)] }, { timing: 'full' });
  expect(found).toMatchObject({ id: 'links.rate.A', severity: 'watch' });
  expect(found?.fix).toBeUndefined();
});
