import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type QrLevel, qrPath } from '../../src/sheets/qr-path';
import { readQr } from './read-qr';

const levels: readonly QrLevel[] = ['L', 'M', 'Q', 'H'];
const read = (text: string, level: QrLevel) => {
  const path = qrPath(text, level)!;
  return readQr(path.lines, path.modules);
};

describe('qrPath', () => {
  it.each(levels)('is read by an outside decoder at level %s', (level) => {
    const link = 'https://plan.example/#of=0b3a&panel=A-C38-R9';
    expect(read(link, level)).toBe(link);
  });
  it('has the sizes of ISO/IEC 18004: version 1 holds 17 bytes at level L, version 2 the eighteenth, and grows by 4 modules', () => {
    expect(qrPath('x'.repeat(17), 'L')!.modules).toBe(21);
    expect(qrPath('x'.repeat(18), 'L')!.modules).toBe(25);
  });
  it('has the largest size for 2,953 bytes at level L (ISO/IEC 18004, table 7), and none for one more', () => {
    expect(qrPath('x'.repeat(2953), 'L')!.modules).toBe(177);
    expect(qrPath('x'.repeat(2954), 'L')).toBeNull();
    expect(qrPath('x'.repeat(1273), 'H')!.modules).toBe(177);
    expect(qrPath('x'.repeat(1274), 'H')).toBeNull();
  });
  it('is null for half a character, and a code for none', () => {
    expect(qrPath('\ud800', 'M')).toBeNull();
    expect(qrPath('', 'M')!.modules).toBe(21);
  });
  it('frames each corner mark by one line without seams: 7 by 7, a hole of 5 by 5, a middle of 3 by 3', () => {
    const { lines } = qrPath('A', 'M')!;
    const square = (at: number, side: number) => [at, at, at + side, at, at + side, at + side, at, at + side];
    const first = (count: number) => [...lines.xyMm.subarray(0, count)];
    expect(first(8)).toEqual(square(0, 7));
    const all = [...lines.ends].map((end, i) => [...lines.xyMm.subarray(2 * (lines.ends[i - 1] ?? 0), 2 * end)]);
    expect(all).toContainEqual(square(2, 3));
    // The hole runs the other way, so that both winding rules leave it open.
    expect(all).toContainEqual([1, 1, 1, 6, 6, 6, 6, 1]);
  });
  it('is read whatever stands in it', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', minLength: 1, maxLength: 60 }),
        fc.constantFrom(...levels),
        (text, level) => {
          expect(read(text, level)).toBe(text);
        },
      ),
      { numRuns: 25 },
    );
  });
});
