import type { LabelGrid } from './label-grid';

const inchMm = 25.4;

function a4(columns: number, rows: number, sideMm: number, topMm: number, acrossMm: number, downMm = 0): LabelGrid {
  return { paper: 'a4', columns, rows, leftMm: sideMm, rightMm: sideMm, topMm, bottomMm: topMm, acrossMm, downMm };
}

/** In inches, as Letter sheets are cut. */
function letter(columns: number, rows: number, side: number, top: number, across: number): LabelGrid {
  const [sideMm, topMm, acrossMm] = [side * inchMm, top * inchMm, across * inchMm];
  const margins = { leftMm: sideMm, rightMm: sideMm, topMm, bottomMm: topMm };
  return { paper: 'letter', columns, rows, ...margins, acrossMm, downMm: 0 };
}

/**
 * Grids to begin with, the largest labels first: how sheets of labels are commonly cut (common practice, no source; figures
 * from memory). A sheet at hand is measured and typed in.
 */
export const startingGrids: readonly LabelGrid[] = [
  a4(2, 7, 4.65, 15.15, 2.5),
  a4(3, 7, 7.25, 15.15, 2.5),
  a4(3, 8, 0, 0.5, 0),
  a4(5, 13, 4.75, 10.7, 2.5),
  letter(2, 5, 0.15625, 0.5, 0.1875),
  letter(2, 10, 0.15625, 0.5, 0.1875),
  letter(3, 10, 0.1875, 0.5, 0.125),
  letter(4, 20, 0.3, 0.5, 0.3),
];
