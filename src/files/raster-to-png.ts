import { Deflate } from 'pako';
import type { Raster } from '../calc/outputs/raster';
import { crc32 } from './crc32';
import { joinBytes } from './join-bytes';

const signature = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a);
/** Colour type of red, green and blue without transparency. */
const trueColour = 2;
/** Filter of a row that states how it differs from the row above: a test picture hardly does. */
const filterUp = 2;
/** Bytes that are handed to the compressor at a time. */
const stripBytes = 1 << 18;
/** Bits that mean something in a picture of 16: inks are made of 10. */
const meantBits = 10;

/**
 * A raster as a PNG file of 8 or 16 bits a channel: the same raster gives the same bytes on every machine. Of its inks the
 * upper 8 bits are taken, or all 16. Source of the form: ISO/IEC 15948:2004 (PNG), clauses 5, 9 and 11.
 */
export function rasterToPng(raster: Raster, bits: 8 | 16): Uint8Array<ArrayBuffer> {
  const { width, height } = raster;
  const header = new Uint8Array(13);
  const view = new DataView(header.buffer);
  view.setUint32(0, width);
  view.setUint32(4, height);
  header.set([bits, trueColour, 0, 0, 0], 8);
  return joinBytes([
    signature,
    chunk('IHDR', header),
    ...(bits === 16 ? [chunk('sBIT', Uint8Array.of(meantBits, meantBits, meantBits))] : []),
    ...compressRows(raster, bits).map((part) => chunk('IDAT', part)),
    chunk('IEND', new Uint8Array(0)),
  ]);
}

function chunk(type: string, data: Uint8Array): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(data.length + 12);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, data.length);
  for (let i = 0; i < 4; i++) bytes[4 + i] = type.charCodeAt(i);
  bytes.set(data, 8);
  view.setUint32(8 + data.length, crc32(bytes.subarray(4, 8 + data.length)));
  return bytes;
}

/** All rows, filtered and compressed strip by strip, so that the picture is never held whole in its samples. */
function compressRows(raster: Raster, bits: 8 | 16): Uint8Array[] {
  const parts: Uint8Array[] = [];
  const deflate = new Deflate({ level: 6, chunkSize: stripBytes });
  deflate.onData = (part) => parts.push(part);
  const samples = inkSamples(raster.palette, bits);
  const rowBytes = raster.width * (bits / 8) * 3 + 1;
  const rowsAStrip = Math.max(1, Math.floor(stripBytes / rowBytes));
  for (let first = 0; first < raster.height; first += rowsAStrip) {
    const rows = Math.min(rowsAStrip, raster.height - first);
    const strip = new Uint8Array(rows * rowBytes);
    for (let row = 0; row < rows; row++) filterRow(raster, first + row, samples, bits, strip, row * rowBytes);
    deflate.push(strip, first + rows === raster.height);
  }
  return parts;
}

/** Writes one row at `at`, which is all 0 before; where a pixel has the ink of the one above it so it stays. */
function filterRow(
  { width, inks }: Raster,
  y: number,
  samples: Uint8Array,
  bits: 8 | 16,
  strip: Uint8Array,
  at: number,
): void {
  const inkBytes = (bits / 8) * 3;
  strip[at] = filterUp;
  const from = y * width;
  for (let x = 0; x < width; x++) {
    const ink = inks[from + x]!;
    const above = y === 0 ? -1 : inks[from - width + x]!;
    if (ink === above) continue;
    for (let i = 0; i < inkBytes; i++) {
      const below = above < 0 ? 0 : samples[above * inkBytes + i]!;
      strip[at + 1 + x * inkBytes + i] = samples[ink * inkBytes + i]! - below;
    }
  }
}

/** Bytes of every ink as the file has them, high byte first. */
function inkSamples(palette: Uint16Array, bits: 8 | 16): Uint8Array {
  if (bits === 8) return Uint8Array.from(palette, (value) => value >> 8);
  const samples = new Uint8Array(palette.length * 2);
  palette.forEach((value, i) => {
    samples[i * 2] = value >> 8;
    samples[i * 2 + 1] = value & 0xff;
  });
  return samples;
}
