import { type LabelGrid, labelSize } from '../../../sheets/labels/label-grid';
import { startingGrids } from '../../../sheets/labels/starting-grids';
import { paperById } from '../../../sheets/pages/papers';

/** 'A4, 3 × 8, each 70 × 37 mm'. */
export function gridWords(grid: LabelGrid, length: (mm: number) => string): string {
  const size = labelSize(grid);
  const each = size === null ? 'no room' : `each ${length(size.widthMm)} × ${length(size.heightMm)}`;
  return `${paperById(grid.paper).name}, ${grid.columns} × ${grid.rows}, ${each}`;
}

/** Place in the list of the starting grid that this one is; -1 where somebody typed another. */
export function startingPlace(grid: LabelGrid): number {
  const keys = Object.keys(grid) as (keyof LabelGrid)[];
  return startingGrids.findIndex((start) => keys.every((key) => start[key] === grid[key]));
}
