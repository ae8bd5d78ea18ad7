import fc from 'fast-check';
import { expect, test } from 'vitest';
import { columnsAcross, cutToSheets, type DrawnArea } from '../../../src/sheets/crew-set/cut-to-sheets';

const space = { aboveMm: 8, belowMm: 10, besideMm: 26, roundMm: 12, tagsMm: 10 };
/** So many columns and rows of panels of 500 x 500 mm. */
const areaOf = (columns: number, rows: number): DrawnArea => ({
  part: { firstColumn: 1, columns, firstRow: 1, rows },
  columnWidthMm: 500,
  heightMm: (_, shown) => shown * 500,
  cutCost: () => 1,
});

test('columnsAcross counts the columns that have room beside what else stands there', () => {
  // 400 - 26 = 374 mm of paper at 1:50 are 18 700 mm: 37 panels of 500.
  expect(columnsAcross(areaOf(1, 1), space, { widthMm: 400 }, 50)).toBe(37);
  // Exactly 40 panels: 26 + 40 x 10 mm.
  expect(columnsAcross(areaOf(1, 1), space, { widthMm: 426 }, 50)).toBe(40);
  expect(columnsAcross(areaOf(1, 1), space, { widthMm: 20 }, 50)).toBe(1);
});

test('cutToSheets takes one sheet where it has room, at every scale that has', () => {
  // 13 x 14 panels at 1:50: 156 mm wide; 140 + 18 + 12 = 170 mm high. At 1:40: 175 + 30 = 205. At 1:25: 280 mm, too high.
  const { parts, reductions } = cutToSheets(areaOf(13, 14), space, [{ widthMm: 384, heightMm: 235 }], 9.8);
  expect(parts).toEqual([{ firstColumn: 1, columns: 13, firstRow: 1, rows: 14 }]);
  expect(reductions).toEqual([40, 50]);
});

test('cutToSheets puts strips one under the other before it takes another sheet', () => {
  // 30 columns at 1:50 are 326 mm and too wide for 250; in two strips 176 mm wide and 2 x (50 + 18) + 12 = 148 mm high.
  expect(cutToSheets(areaOf(30, 5), space, [{ widthMm: 250, heightMm: 150 }], 9.8).parts).toHaveLength(1);
  expect(cutToSheets(areaOf(30, 5), space, [{ widthMm: 250, heightMm: 147 }], 9.8).parts).toHaveLength(2);
});

test('cutToSheets cuts columns, and rows where one strip is too high, at the smallest scale with panels wide enough', () => {
  // 1:50 keeps 10 mm a panel. 384 x 235 mm hold 35 columns and (235 - 12 - 18) / 10 = 20 rows.
  const { parts, reductions } = cutToSheets(areaOf(60, 30), space, [{ widthMm: 384, heightMm: 235 }], 9.8);
  expect(reductions).toEqual([50]);
  expect(parts).toEqual([
    { firstColumn: 1, columns: 30, firstRow: 1, rows: 15 },
    { firstColumn: 1, columns: 30, firstRow: 16, rows: 15 },
    { firstColumn: 31, columns: 30, firstRow: 1, rows: 15 },
    { firstColumn: 31, columns: 30, firstRow: 16, rows: 15 },
  ]);
});

test('cutToSheets counts on from the first column and row of a part', () => {
  const area = { ...areaOf(60, 30), part: { firstColumn: 101, columns: 60, firstRow: 11, rows: 10 } };
  expect(cutToSheets(area, space, [{ widthMm: 384, heightMm: 135 }], 9.8).parts).toEqual([
    { firstColumn: 101, columns: 30, firstRow: 11, rows: 10 },
    { firstColumn: 131, columns: 30, firstRow: 11, rows: 10 },
  ]);
});

test('cutToSheets takes the paper as it lies best: fewest sheets, then the largest picture', () => {
  const lying = { widthMm: 235, heightMm: 120 };
  const upright = { widthMm: 135, heightMm: 220 };
  // 10 x 15 panels at 1:50 are 126 mm wide and 180 mm high: two sheets on the lying paper, one on the upright one.
  expect(cutToSheets(areaOf(10, 15), space, [lying, upright], 9.8).parts).toHaveLength(1);
  expect(cutToSheets(areaOf(10, 15), space, [lying], 9.8).parts).toHaveLength(2);
  // 4 x 4: 1:20 on the upright paper (126 mm wide), 1:25 on the lying one (110 mm high).
  expect(cutToSheets(areaOf(4, 4), space, [lying, upright], 9.8).reductions[0]).toBe(20);
});

test('cutToSheets shows every place once, on sheets that have room for it', () => {
  fc.assert(
    fc.property(
      fc.record({ columns: fc.integer({ min: 1, max: 400 }), rows: fc.integer({ min: 1, max: 120 }) }),
      fc.record({ widthMm: fc.integer({ min: 100, max: 500 }), heightMm: fc.integer({ min: 60, max: 400 }) }),
      fc.constantFrom(1, 2.5, 9.8, 30, 200),
      ({ columns, rows }, room, leastPanelMm) => {
        const { parts, reductions } = cutToSheets(areaOf(columns, rows), space, [room], leastPanelMm);
        const seen = new Uint8Array(columns * rows);
        for (const part of parts) {
          for (let c = 0; c < part.columns; c++) {
            for (let r = 0; r < part.rows; r++) seen[(part.firstColumn - 1 + c) * rows + part.firstRow - 1 + r]! += 1;
          }
        }
        expect(seen.every((times) => times === 1)).toBe(true);
        const reduction = reductions.at(-1)!;
        const across = columnsAcross(areaOf(1, 1), space, room, reduction);
        for (const part of parts) {
          const strips = Math.ceil(part.columns / across);
          const highMm = strips * ((part.rows * 500) / reduction + 18) + 12;
          // A room that does not hold one row of one column is not of this world.
          if (part.rows > 1 || strips > 1) expect(highMm).toBeLessThanOrEqual(room.heightMm + 1e-6);
        }
      },
    ),
  );
});
