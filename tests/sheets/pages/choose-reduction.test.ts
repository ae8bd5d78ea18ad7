import fc from 'fast-check';
import { expect, test } from 'vitest';
import { chooseReduction } from '../../../src/sheets/pages/choose-reduction';
import { smallDrawing } from '../../files/small-drawing';

const reductions = [10, 20, 25, 50, 75, 100];
const sheet = { reductions, draw: () => smallDrawing('Ann') };

test('chooseReduction takes the largest scale at which lines and the letters round them have room', () => {
  // 4 m wide, 2.4 m high with its dimension, 10 mm of air on each side: 180 x 116 mm at 1:25, 220 x 140 at 1:20.
  expect(chooseReduction(sheet, { widthMm: 180, heightMm: 150 }).reduction).toBe(25);
  expect(chooseReduction(sheet, { widthMm: 220, heightMm: 140 }).reduction).toBe(20);
  expect(chooseReduction(sheet, { widthMm: 220, heightMm: 139 }).reduction).toBe(25);
});

test('chooseReduction goes on beyond the scales of the sheet where none has room', () => {
  const { reduction } = chooseReduction({ ...sheet, reductions: [10, 20] }, { widthMm: 60, heightMm: 60 });
  expect(reduction).toBe(5000);
});

test('chooseReduction asks for a drawing with the room and the scale it takes', () => {
  const asked: (readonly [number, number])[] = [];
  const room = { widthMm: 180, heightMm: 150 };
  const { reduction, drawing } = chooseReduction(
    {
      reductions,
      draw: (to, given) => {
        asked.push([to, given.widthMm]);
        return { ...smallDrawing('Ann'), title: `1:${to}` };
      },
    },
    room,
  );
  expect(drawing.title).toBe(`1:${reduction}`);
  expect(asked.every(([, width]) => width === 180)).toBe(true);
  // A sheet of many scales is not drawn at each of them.
  expect(asked.length).toBeLessThanOrEqual(3);
});

test('chooseReduction finds what trying one scale after the other finds, where clear space grows with the scale', () => {
  const size = fc.record({
    bottomMm: fc.integer({ min: 2900, max: 40_000 }),
    clearMm: fc.integer({ min: 0, max: 60 }),
  });
  fc.assert(
    fc.property(size, fc.integer({ min: 80, max: 300 }), ({ bottomMm, clearMm }, heightMm) => {
      const drawn = (reduction: number) => ({
        ...smallDrawing('Ann'),
        box: { leftMm: 1000, topMm: 500, rightMm: 5000, bottomMm: bottomMm + clearMm * reduction },
      });
      const room = { widthMm: 400, heightMm };
      // On paper 10 mm of air round the lines, from 500 to 2900, and 2 mm round the box.
      const lowest = (reduction: number) => Math.max(2900 + 10 * reduction, bottomMm + (clearMm + 2) * reduction);
      const needed = (reduction: number) => (lowest(reduction) - (500 - 10 * reduction)) / reduction;
      const wide = (reduction: number) => 4000 / reduction + 20 <= 400;
      const first = reductions.find((reduction) => needed(reduction) <= heightMm && wide(reduction)) ?? null;
      const { reduction } = chooseReduction({ reductions, draw: drawn }, room);
      if (first !== null) expect(reduction).toBe(first);
      else expect(reduction).toBeGreaterThan(100);
    }),
  );
});
