import { PNG } from 'pngjs';

export interface ReadPng {
  readonly width: number;
  readonly height: number;
  /** Red, green and blue of one pixel, in the bits that were asked. */
  readonly rgb: (x: number, y: number) => number[];
}

/** A picture as another program decodes it: in 8 bits, or in the 16 of the file. */
export function readPng(bytes: Uint8Array, bits: 8 | 16 = 8): ReadPng {
  const { width, height, data } = PNG.sync.read(Buffer.from(bytes), { skipRescale: bits === 16 });
  return { width, height, rgb: (x, y) => Array.from(data.subarray((y * width + x) * 4, (y * width + x) * 4 + 3)) };
}

/** Corners of a panel by its line of the pixel map, as they are drawn on the picture of its node. */
export function cornersOfRow(row: Readonly<Record<string, string>>): {
  readonly outer: readonly (readonly [x: number, y: number])[];
  /** A pixel inwards of each. */
  readonly inner: readonly (readonly [x: number, y: number])[];
} {
  const [x, y] = [Number(row.canvasX), Number(row.canvasY)];
  const [right, bottom] = [x + Number(row.width) - 1, y + Number(row.height) - 1];
  return {
    outer: [
      [x, y],
      [right, y],
      [x, bottom],
      [right, bottom],
    ],
    inner: [
      [x + 1, y + 1],
      [right - 1, y + 1],
      [x + 1, bottom - 1],
      [right - 1, bottom - 1],
    ],
  };
}
