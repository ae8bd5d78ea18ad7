import { describe, expect, it } from 'vitest';
import { labelCode } from '../../../src/sheets/labels/label-code';
import { readQr } from '../read-qr';

const link = 'https://plan.example/#of=0b3a7c52-9a51-4e0e-8f26-0d0f6e3f7c11&port=3B-04';

describe('labelCode', () => {
  it('is read by an outside decoder, and takes no more than half the width and all of the height', () => {
    const { path, sideMm } = labelCode(link, { widthMm: 60, heightMm: 34 })!;
    expect(readQr(path.lines, path.modules)).toBe(link);
    // Version 5 holds 84 bytes at level M (ISO/IEC 18004, table 7): 37 modules and 8 of the quiet zone, 0.6 mm each.
    expect(sideMm).toBeCloseTo(45 * 0.6, 9);
    expect(labelCode(link, { widthMm: 40, heightMm: 34 })!.sideMm).toBeCloseTo(20, 9);
    expect(labelCode(link, { widthMm: 60, heightMm: 17 })!.sideMm).toBeCloseTo(17, 9);
  });
  it('gives up some sureness before it gives up the code', () => {
    // Version 4 holds 78 bytes at level L: 33 + 8 modules of 0.35 mm are 14.35 mm.
    const { path } = labelCode(link, { widthMm: 60, heightMm: 14.5 })!;
    expect(path.modules).toBe(33);
    expect(readQr(path.lines, path.modules)).toBe(link);
  });
  it('is null where no camera would read it, or no code holds the link', () => {
    expect(labelCode(link, { widthMm: 60, heightMm: 14 })).toBeNull();
    expect(labelCode(link, { widthMm: 27, heightMm: 34 })).toBeNull();
    expect(labelCode('x'.repeat(3000), { widthMm: 1000, heightMm: 1000 })).toBeNull();
  });
});
