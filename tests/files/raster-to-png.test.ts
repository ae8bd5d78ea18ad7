import fc from 'fast-check';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { newRaster, type Raster } from '../../src/calc/outputs/raster';
import { rasterToPng } from '../../src/files/raster-to-png';

/** Any small raster: up to 40 x 40 pixels in up to 20 inks. */
const rasters = fc
  .tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 20 }))
  .chain(([width, height, count]) =>
    fc
      .tuple(
        fc.array(fc.nat(65535), { minLength: count * 3, maxLength: count * 3 }),
        fc.array(fc.nat(count - 1), { minLength: width * height, maxLength: width * height }),
      )
      .map(
        ([palette, inks]): Raster => ({
          width,
          height,
          palette: Uint16Array.from(palette),
          inks: Uint16Array.from(inks),
        }),
      ),
  );

/** Red, green and blue of every pixel as another program decodes them: in 8 bits, or in the 16 of the file. */
function decode(bytes: Uint8Array, bits: 8 | 16): number[] {
  const { data } = PNG.sync.read(Buffer.from(bytes), { skipRescale: bits === 16 });
  return Array.from(data).filter((_, i) => i % 4 !== 3);
}

const expected = ({ inks, palette }: Raster, shift: number) =>
  Array.from(inks).flatMap((ink) => [0, 1, 2].map((channel) => palette[ink * 3 + channel]! >> shift));

test('rasterToPng is decoded by another program to the inks it was given, in 8 bits', () => {
  fc.assert(
    fc.property(rasters, (raster) => {
      expect(decode(rasterToPng(raster, 8), 8)).toEqual(expected(raster, 8));
    }),
  );
});

test('rasterToPng is decoded by another program to the inks it was given, in all 16 bits', () => {
  fc.assert(
    fc.property(rasters, (raster) => {
      expect(decode(rasterToPng(raster, 16), 16)).toEqual(expected(raster, 0));
    }),
  );
});

test('rasterToPng states size, depth and, of 16 bits, the 10 that mean something', () => {
  const raster = newRaster(300, 7, Uint16Array.of(0, 0, 0));
  const shallow = Buffer.from(rasterToPng(raster, 8));
  const deep = Buffer.from(rasterToPng(raster, 16));
  // ISO/IEC 15948:2004, 11.2.2: IHDR is width, height, depth, colour type; 11.3.3.4: sBIT is a byte a channel.
  expect([shallow.readUInt32BE(16), shallow.readUInt32BE(20), shallow[24], shallow[25]]).toEqual([300, 7, 8, 2]);
  expect(deep[24]).toBe(16);
  const sbit = deep.indexOf('sBIT');
  expect([...deep.subarray(sbit + 4, sbit + 7)]).toEqual([10, 10, 10]);
  expect(shallow.indexOf('sBIT')).toBe(-1);
});

test('rasterToPng compresses strip by strip: a picture of many strips is whole, and the same bytes each time', () => {
  const raster = newRaster(
    1000,
    400,
    Uint16Array.from({ length: 3 * 1024 }, (_, i) => (i * 7919) % 65536),
  );
  for (let i = 0; i < raster.inks.length; i++) raster.inks[i] = (i * 31) % 1024;
  const bytes = rasterToPng(raster, 8);
  expect(Buffer.from(rasterToPng(raster, 8)).equals(Buffer.from(bytes))).toBe(true);
  expect(Buffer.from(decode(bytes, 8)).equals(Buffer.from(expected(raster, 8)))).toBe(true);
});

// A picture that a compressor got wrong: it pointed back to before the first byte.
test('rasterToPng writes a picture of few inks whole', () => {
  const raster: Raster = {
    width: 3,
    height: 21,
    palette: Uint16Array.of(0, 0, 768, 0, 0, 0, 0, 256, 0, 256, 768, 0, 0, 256, 0),
    inks: Uint16Array.from('100000020000020000101011103121202022000000100000100002201200000', Number),
  };
  expect(decode(rasterToPng(raster, 8), 8)).toEqual(expected(raster, 8));
});
