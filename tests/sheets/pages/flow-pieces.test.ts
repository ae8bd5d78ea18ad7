import fc from 'fast-check';
import { expect, test } from 'vitest';
import { flowPieces } from '../../../src/sheets/pages/flow-pieces';
import type { Piece } from '../../../src/sheets/pages/piece';
import { writeText } from '../../../src/sheets/pages/write-text';
import { textsOf } from './page-boxes';

const style = { face: 'sans', sizeMm: 1, colour: '#000000' } as const;
const piece = (name: string, heightMm: number, more: Partial<Piece> = {}): Piece => ({
  heightMm,
  spaceMm: 0,
  withNext: false,
  head: null,
  place: (left, top) => [writeText(`${name}@${left},${top}`, left, top, style)],
  ...more,
});
const head = {
  heightMm: 5,
  place: (left: number, top: number) => [writeText(`head@${left},${top}`, left, top, style)],
};
/** A page of one column, from 0 to 100. */
const one = () => [{ leftMm: 0, topMm: 0, rightMm: 50, bottomMm: 100 }];
const pagesOf = (pieces: readonly Piece[], slots: Parameters<typeof flowPieces>[1] = one) =>
  flowPieces(pieces, slots).map(({ items }) => textsOf(items));

test('flowPieces stands pieces under each other, with space between them but not at the head of a page', () => {
  const pieces = ['a', 'b', 'c'].map((name) => piece(name, 40, { spaceMm: 10 }));
  expect(pagesOf(pieces)).toEqual([['a@0,0', 'b@0,50'], ['c@0,0']]);
  expect(flowPieces(pieces, one).map(({ bottomMm }) => bottomMm)).toEqual([90, 40]);
});

test('flowPieces repeats the head where a table goes on', () => {
  const rows = ['a', 'b', 'c'].map((name) => piece(name, 45, { head }));
  const title = piece('title', 10, { withNext: true });
  expect(pagesOf([title, ...rows])).toEqual([
    ['title@0,0', 'a@0,10', 'b@0,55'],
    ['head@0,0', 'c@0,5'],
  ]);
});

test('flowPieces leaves no title behind at the foot of a page', () => {
  const pieces = [piece('a', 85), piece('title', 10, { withNext: true }), piece('row', 10, { head })];
  expect(pagesOf(pieces)).toEqual([['a@0,0'], ['title@0,0', 'row@0,10']]);
});

test('flowPieces fills columns from left to right before it turns the page', () => {
  const two = () => [
    { leftMm: 0, topMm: 0, rightMm: 50, bottomMm: 100 },
    { leftMm: 60, topMm: 0, rightMm: 110, bottomMm: 100 },
  ];
  const pieces = ['a', 'b', 'c', 'd', 'e'].map((name) => piece(name, 50));
  expect(pagesOf(pieces, two)).toEqual([['a@0,0', 'b@0,50', 'c@60,0', 'd@60,50'], ['e@0,0']]);
});

test('flowPieces leaves a first page empty that has no room, and uses what little there is', () => {
  const none = (page: number) => (page === 0 ? [] : one());
  expect(pagesOf([piece('a', 10)], none)).toEqual([[], ['a@0,0']]);
  const little = (page: number) => (page === 0 ? [{ ...one()[0]!, topMm: 85 }] : one());
  expect(pagesOf([piece('a', 10), piece('b', 10)], little)).toEqual([['a@0,85'], ['b@0,0']]);
});

test('flowPieces tears a chain that no page holds', () => {
  const pieces = Array.from({ length: 4 }, (_, i) => piece(`p${i}`, 40, { withNext: true }));
  expect(pagesOf(pieces)).toEqual([
    ['p0@0,0', 'p1@0,40'],
    ['p2@0,0', 'p3@0,40'],
  ]);
});

test('flowPieces places every piece once, in order, above the foot of its column', () => {
  const anyPiece = fc.record({
    heightMm: fc.double({ min: 1, max: 90, noNaN: true }),
    withNext: fc.boolean(),
    hasHead: fc.boolean(),
  });
  fc.assert(
    fc.property(fc.array(anyPiece, { maxLength: 40 }), (made) => {
      const placed: number[] = [];
      const pieces = made.map(({ heightMm, withNext, hasHead }, i) =>
        piece('x', heightMm, {
          withNext,
          head: hasHead ? head : null,
          place: (_left, top) => {
            placed.push(i);
            expect(top + heightMm).toBeLessThanOrEqual(100.001);
            return [];
          },
        }),
      );
      flowPieces(pieces, one);
      expect(placed).toEqual(made.map((_, i) => i));
    }),
  );
});
