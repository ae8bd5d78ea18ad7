import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitLabel, type LabelRoom } from '../../../src/sheets/labels/fit-label';
import type { LabelWords } from '../../../src/sheets/labels/label-words';
import { printableText } from '../../../src/sheets/pages/printable-text';
import { textWidthMm } from '../../../src/sheets/pages/text-width';
import { linesHeightMm } from '../../../src/sheets/pages/write-text';

const words: LabelWords = {
  name: '3B-04',
  from: 'from Port 3B-04',
  to: 'to A C38 R1',
  cable: 'Home run 20 m (invented)',
  end: 'from',
  far: 'to A C38 R1',
};
const texts = (room: LabelRoom) => fitLabel(words, room).map(({ text }) => text);

describe('fitLabel', () => {
  it('says everything on a line each where there is room, the name large and this end strong', () => {
    const lines = fitLabel(words, { widthMm: 60, heightMm: 34 });
    expect(lines.map(({ text }) => text)).toEqual([words.name, words.from, words.to, words.cable]);
    expect(lines.map(({ style }) => style.face)).toEqual(['strong', 'strong', 'sans', 'sans']);
    // 4.2 mm for from and to, 1.7 times as much for the name, 0.75 times for what cable it is.
    expect(lines.map(({ style }) => style.sizeMm)).toEqual([7.14, 4.2, 4.2, 3.15]);
  });
  it('shrinks first', () => {
    const lines = fitLabel(words, { widthMm: 30, heightMm: 20 });
    expect(lines).toHaveLength(4);
    expect(lines[1]!.style.sizeMm).toBeLessThan(4.2);
    expect(lines[1]!.style.sizeMm).toBeGreaterThan(1.7);
  });
  it('breaks what cable it is at blanks first, then the others', () => {
    expect(texts({ widthMm: 14, heightMm: 22 })).toEqual([
      '3B-04',
      'from Port 3B-04',
      'to A C38 R1',
      'Home run 20 m',
      '(invented)',
    ]);
    expect(texts({ widthMm: 10, heightMm: 22 })).toEqual([
      '3B-04',
      'from Port',
      '3B-04',
      'to A C38',
      'R1',
      'Home run 20',
      'm (invented)',
    ]);
  });
  it('then says the name and the far end alone', () => {
    expect(texts({ widthMm: 12, heightMm: 4 })).toEqual(['3B-04', 'to A C38 R1']);
  });
  it('never comes out wider or higher than its room, whatever stands on it', () => {
    const text = (face: 'sans' | 'strong') =>
      fc.string({ unit: 'grapheme', maxLength: 60 }).map((any) => printableText(any, face));
    const anyWords = fc.record({
      name: text('strong'),
      // Either face may carry it: what both have.
      from: text('sans').map((any) => printableText(any, 'strong')),
      to: text('sans').map((any) => printableText(any, 'strong')),
      cable: text('sans'),
      end: fc.constantFrom('from' as const, 'to' as const),
      far: text('sans'),
    });
    const side = fc.double({ min: 0.5, max: 120, noNaN: true });
    fc.assert(
      fc.property(anyWords, side, side, (any, widthMm, heightMm) => {
        const lines = fitLabel(any, { widthMm, heightMm });
        for (const { text: line, style } of lines) {
          expect(textWidthMm(line, style.face, style.sizeMm)).toBeLessThanOrEqual(widthMm + 1e-9);
        }
        const high = lines.reduce((sum, { style }) => sum + linesHeightMm(style, 1), 0);
        expect(high).toBeLessThanOrEqual(heightMm + 1e-9);
        const whole = lines
          .map(({ text: line }) => line)
          .join(' ')
          .split(' ')
          .filter(Boolean);
        const full = [any.name, any.from, any.to, any.cable].join(' ').split(' ').filter(Boolean);
        const short = [any.name, any.far].join(' ').split(' ').filter(Boolean);
        // Nothing is cut: all words are there, or those of the short form.
        expect([full, short]).toContainEqual(whole);
      }),
      { numRuns: 300 },
    );
  });
});
