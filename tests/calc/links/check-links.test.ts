import { expect, test } from 'vitest';
import { checkLinks } from '../../../src/calc/links/check-links';
import { mode } from '../ports/plain-items';
import { linked, type PlainSending } from './plain-links';

function checks(sendings: readonly PlainSending[], rest: Parameters<typeof linked>[1] = {}) {
  const { inputs, results } = linked(sendings, rest);
  return checkLinks(inputs, results);
}

test('checkLinks judges rate and link of every surface that is sent something', () => {
  const found = checks(
    [
      { letter: 'A', canvases: [{ width: 1920, height: 1080 }] },
      { letter: 'B', canvases: [] },
      { letter: 'C', canvases: [{ width: 2808, height: 2808 }], sharing: 2 },
    ],
    { inputGbps: 20 },
  );
  expect(found.map(({ id }) => id)).toEqual([
    'links.rate.A',
    'links.carried.A',
    'links.rate.C',
    'links.carried.C',
    'links.input.C',
  ]);
  expect(found.every(({ severity }) => severity === 'pass')).toBe(true);
});

// 3200 x 2880 at 60 and 10 bit: 575.6 MHz to the whole pixel is found below; HBR2 carries 17.28 Gbit/s = 576 MHz of 30 bits.
test('checkLinks watches a DisplayPort link that is all but full', () => {
  const found = checks([{ canvases: [{ width: 3159, height: 2880 }], served: [mode(60, 10)] }], {
    linkId: 'displayport-hbr2',
  });
  const margin = found.find(({ id }) => id === 'links.margin.A');
  // Totals 3239 x 2962 (460 microseconds of 2880 lines: 82), 575.635 MHz: 0.06 % left of 576.
  expect(margin).toMatchObject({ severity: 'watch', limit: 0.006 });
  expect(margin?.measured).toBeCloseTo(1 - 575.635 / 576, 5);
  const roomy = checks([{ canvases: [{ width: 1920, height: 1080 }] }], { linkId: 'displayport-hbr2' });
  expect(roomy.some(({ id }) => id.startsWith('links.margin'))).toBe(false);
});
