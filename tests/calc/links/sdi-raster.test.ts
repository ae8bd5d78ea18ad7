import { expect, test } from 'vitest';
import { linkById } from '../../../src/calc/links/link-by-id';
import { sdiNeed, sdiRaster } from '../../../src/calc/links/sdi-raster';

const found = (id: string, width: number, height: number, frames: number, seconds = 1) =>
  sdiRaster(linkById(id)!, { width, height }, { frames, seconds });

// From memory of SMPTE ST 425, ST 2081 and ST 2082, RGB 4:4:4 at 10 and 12 bit.
test('sdiRaster: 3G takes 1080 lines up to 30 frames, 6G and dual 3G up to 60', () => {
  expect(found('sdi-3g-single', 1920, 1080, 30)).toMatchObject({ width: 1920, height: 1080 });
  expect(found('sdi-3g-single', 1920, 1080, 60)).toBe('rate');
  expect(found('sdi-3g-dual', 1920, 1080, 60)).toMatchObject({ width: 1920 });
  expect(found('sdi-6g-single', 2048, 1080, 50)).toMatchObject({ width: 2048 });
  expect(found('sdi-6g-single', 3840, 2160, 30)).toBe('raster');
});

test('sdiRaster: 2160 lines take 12G, dual 6G or quad 3G up to 30 frames, and twice of it up to 60', () => {
  for (const id of ['sdi-12g-single', 'sdi-6g-dual', 'sdi-3g-quad']) {
    expect(found(id, 3840, 2160, 30)).toMatchObject({ width: 3840, height: 2160 });
    expect(found(id, 3840, 2160, 60)).toBe('rate');
  }
  for (const id of ['sdi-12g-dual', 'sdi-6g-quad']) expect(found(id, 4096, 2160, 60)).toMatchObject({ width: 4096 });
});

test('sdiRaster takes the least raster that holds the canvas', () => {
  expect(found('sdi-12g-single', 1921, 1080, 24)).toMatchObject({ width: 2048, height: 1080 });
  expect(found('sdi-12g-single', 1000, 1081, 24)).toMatchObject({ width: 3840, height: 2160 });
  expect(found('sdi-12g-single', 2808, 2808, 24)).toBe('raster');
});

test('sdiRaster knows x1000/1001 rates and no odd ones', () => {
  expect(found('sdi-3g-single', 1920, 1080, 30_000, 1001)).toMatchObject({ width: 1920 });
  expect(found('sdi-6g-single', 1920, 1080, 60_000, 1001)).toMatchObject({ width: 1920 });
  expect(found('sdi-12g-single', 1920, 1080, 72)).toBe('rate');
});

test('sdiNeed of every rate of a tier is the same: blanking fills the line', () => {
  const hd = { width: 1920, height: 1080 };
  for (const frames of [24, 25, 30]) expect(sdiNeed(hd, { frames, seconds: 1 })).toBe(2.97e9);
  for (const frames of [48, 50, 60]) expect(sdiNeed(hd, { frames, seconds: 1 })).toBe(5.94e9);
  expect(sdiNeed({ width: 3840, height: 2160 }, { frames: 60_000, seconds: 1001 })).toBe(23.76e9);
  expect(sdiNeed(hd, { frames: 120, seconds: 1 })).toBe(11.88e9);
});
