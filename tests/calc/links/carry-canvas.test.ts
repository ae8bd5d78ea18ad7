import { expect, test } from 'vitest';
import reference from '../../../fixtures/reference/link-rates.json';
import { carryCanvas } from '../../../src/calc/links/carry-canvas';
import { linkById } from '../../../src/calc/links/link-by-id';
import type { TimingChoice } from '../../../src/calc/links/time-canvas';
import type { BitDepth } from '../../../src/plan/primitives';
import { mode } from '../ports/plain-items';
import { leastBlanking } from './least-blanking';

const cta: TimingChoice = { timing: 'cta', containerId: null };
const carry = (id: string, width: number, height: number, fed = mode(60), choice = leastBlanking) =>
  carryCanvas(linkById(id)!, { width, height }, fed, choice);

const displayPort = ['hbr2', 'hbr3', 'uhbr10', 'uhbr13-5', 'uhbr20'].map((name) => `displayport-${name}`);
const rows = reference.needs.map((row) => {
  const [width, height, frames] = row.timing.match(/\d+/g)!.map(Number);
  return {
    ...row,
    width: width!,
    height: height!,
    fed: mode(frames!, row.bitsPerComponent as BitDepth),
    choice: row.timing.endsWith('CTA') ? cta : leastBlanking,
  };
});

// Source: fixtures/reference/link-rates.json, which timing needs which link, computed from the published tables.
test.each(rows)('carryCanvas of $timing at $bitsPerComponent bit', (row) => {
  const fits = (id: string) => carry(id, row.width, row.height, row.fed, row.choice).fits;
  const least = displayPort.find(fits);
  expect(least?.replace('displayport-', '').replace('-', '.').toUpperCase() ?? 'none without compression').toBe(
    row.lowestDisplayPortFourLanes,
  );
  const tmds = ['340', '600'].find((clock) => fits(`hdmi-tmds-${clock}`));
  expect(row.hdmiTmdsClass).toContain(tmds ?? 'FRL or compression');
  const need = carry('displayport-uhbr20', row.width, row.height, row.fed, row.choice).needBps!;
  expect(need / 1e9).toBeCloseTo(row.dataRateGbps, 3);
});

test('carryCanvas is held against fifty timings and more', () => {
  expect(rows.length).toBeGreaterThan(50);
});

test('carryCanvas says why not: the clock of TMDS, the depth of its first version, the payload of DisplayPort', () => {
  expect(carry('hdmi-tmds-340', 3840, 2160)).toMatchObject({ fits: false, whyNot: 'clock' });
  // 522.614 MHz is below 600, its character rate at 10 bit (653.268 MHz) is not.
  expect(carry('hdmi-tmds-600', 3840, 2160, mode(60, 10))).toMatchObject({ fits: false, whyNot: 'clock' });
  expect(carry('hdmi-tmds-165', 1280, 720, mode(24, 10))).toMatchObject({ fits: false, whyNot: 'depth' });
  expect(carry('displayport-hbr2', 7680, 4320)).toMatchObject({ fits: false, whyNot: 'payload' });
  expect(carry('displayport-hbr2', 100, 100, mode(72), cta)).toMatchObject({
    whyNot: 'timing',
    needBps: null,
    marginShare: null,
  });
});

test('carryCanvas of FRL is an upper bound: what is more may still pass, unless its active pixels alone are more', () => {
  // 2808 x 2808 at 60 and 10 bit: 15.013 Gbit/s with blanking, 14.19 without; 3 lanes of 6 carry 15.748, of 3 7.874.
  expect(carry('hdmi-frl-3x6', 2808, 2808, mode(60, 10))).toMatchObject({ fits: true, isAtMost: true });
  expect(carry('hdmi-frl-3x3', 2808, 2808, mode(60, 10))).toMatchObject({ fits: false, whyNot: 'payload' });
  // 1920 x 1080 at 120 and 10 bit: 8.237 Gbit/s with blanking, 7.465 without.
  expect(carry('hdmi-frl-3x3', 1920, 1080, mode(120, 10))).toMatchObject({ fits: false, whyNot: 'unproven' });
});

test('carryCanvas of ST 2110-20 counts packets, not blanking', () => {
  // 3840 x 2160 at 60 and 8 bit: 12.759 Gbit/s on the wire.
  expect(carry('st-2110-10', 3840, 2160)).toMatchObject({ fits: false, whyNot: 'packets' });
  const fit = carry('st-2110-25', 3840, 2160);
  expect(fit.fits).toBe(true);
  expect(fit.marginShare).toBeCloseTo(1 - 12.759175 / 25, 6);
});

test('carryCanvas of SDI puts the canvas into a fixed raster', () => {
  expect(carry('sdi-6g-single', 1900, 1000)).toMatchObject({
    fits: true,
    raster: { width: 1920, height: 1080 },
    needBps: 5.94e9,
    marginShare: 0,
  });
  expect(carry('sdi-3g-single', 1900, 1000)).toMatchObject({ fits: false, whyNot: 'rate', raster: null });
  expect(carry('sdi-12g-quad', 2808, 2808)).toMatchObject({ fits: false, whyNot: 'rate' });
  expect(carry('sdi-12g-dual', 2808, 2808)).toMatchObject({ fits: false, whyNot: 'raster' });
});
