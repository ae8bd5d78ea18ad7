import type { LabelGrid } from '../../sheets/labels/label-grid';
import { papers } from '../../sheets/pages/papers';

/** Most rows or columns of labels on a sheet. */
export const mostLabelsAlong = 100;
const lengths = ['leftMm', 'rightMm', 'topMm', 'bottomMm', 'acrossMm', 'downMm'] as const;

/** A grid as it was remembered; null where it is none. */
export function readLabelGrid(value: unknown): LabelGrid | null {
  if (typeof value !== 'object' || value === null) return null;
  const grid = value as { readonly [Key in keyof LabelGrid]?: unknown };
  const isCount = (count: unknown) => Number.isInteger(count) && Number(count) >= 1 && Number(count) <= mostLabelsAlong;
  const isLength = (mm: unknown) => typeof mm === 'number' && mm >= 0 && mm < 1000;
  const isGrid =
    papers.some(({ id }) => id === grid.paper) &&
    isCount(grid.columns) &&
    isCount(grid.rows) &&
    lengths.every((key) => isLength(grid[key]));
  return isGrid ? (value as LabelGrid) : null;
}
