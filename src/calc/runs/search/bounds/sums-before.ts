import type { Region } from '../region';
import type { CanvasLattice } from './canvas-lattice';

/** Panels and pixels in the columns before c and rows before r, at c * (rows + 1) + r. */
export function sumsBefore(region: Region, lattice: CanvasLattice): { panels: Float64Array; pixels: Float64Array } {
  const columns = lattice.left.length;
  const rows = lattice.top.length;
  const panels = new Float64Array((columns + 1) * (rows + 1));
  const pixels = new Float64Array((columns + 1) * (rows + 1));
  for (let cell = 0; cell < region.size; cell++) {
    const at = (region.column[cell]! - lattice.columnFirst + 1) * (rows + 1) + region.row[cell]! - lattice.rowFirst + 1;
    panels[at] = 1;
    pixels[at] = region.pixels[cell]!;
  }
  for (const sums of [panels, pixels]) {
    for (let c = 1; c <= columns; c++) {
      for (let r = 1; r <= rows; r++) {
        const at = c * (rows + 1) + r;
        sums[at] = sums[at]! + sums[at - 1]! + sums[at - rows - 1]! - sums[at - rows - 2]!;
      }
    }
  }
  return { panels, pixels };
}

/** What stands in columns c1..c2 and rows r1..r2, by sums as above. */
export function sumInside(sums: Float64Array, rows: number, c1: number, c2: number, r1: number, r2: number): number {
  const right = (c2 + 1) * (rows + 1);
  const left = c1 * (rows + 1);
  return sums[right + r2 + 1]! - sums[left + r2 + 1]! - sums[right + r1]! + sums[left + r1]!;
}
