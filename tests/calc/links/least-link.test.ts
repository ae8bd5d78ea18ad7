import { expect, test } from 'vitest';
import { carryCanvas } from '../../../src/calc/links/carry-canvas';
import { leastLink } from '../../../src/calc/links/least-link';
import { videoLinks } from '../../../src/calc/tables/video-links';
import { mode } from '../ports/plain-items';
import { leastBlanking } from './least-blanking';

const least = (width: number, height: number, fed = mode(60)) =>
  leastLink(
    videoLinks.map((link) => carryCanvas(link, { width, height }, fed, leastBlanking)),
    { width, height },
  )?.linkId;

test('leastLink takes the least payload that carries the canvas', () => {
  // 133.32 MHz at 8 bit: TMDS of 165 MHz.
  expect(least(1920, 1080)).toBe('hdmi-tmds-165');
  // 522.614 MHz at 10 bit, 15.678 Gbit/s: three lanes of FRL at 6 carry 15.748.
  expect(least(3840, 2160, mode(60, 10))).toBe('hdmi-frl-3x6');
});

test('leastLink leaves fixed rasters that are larger than the canvas for the last', () => {
  // 1900 x 1000 at 12 bit, 60: 4.38 Gbit/s; SDI of 5.94 would send 1920 x 1080.
  expect(least(1900, 1000, mode(60, 12))).toBe('hdmi-frl-3x3');
  // The raster itself is as good as any: SDI 6G at 5.94 Gbit/s before FRL at 7.87.
  expect(least(1920, 1080, mode(60, 12))).toBe('sdi-6g-single');
});

test('leastLink finds none where none carries it', () => {
  expect(least(20_000, 20_000, mode(240, 12))).toBeUndefined();
});
