import { describe, expect, it } from 'vitest';
import { labelBox, labelSize } from '../../../src/sheets/labels/label-grid';
import { startingGrids } from '../../../src/sheets/labels/starting-grids';
import { paperById } from '../../../src/sheets/pages/papers';

describe('startingGrids', () => {
  it.each(startingGrids)('$columns by $rows on $paper lies on the paper and has room', (grid) => {
    const size = labelSize(grid)!;
    const paper = paperById(grid.paper);
    const last = labelBox(grid, size, grid.rows * grid.columns - 1);
    expect(last.rightMm).toBeCloseTo(paper.widthMm - grid.rightMm, 9);
    expect(last.bottomMm).toBeCloseTo(paper.heightMm - grid.bottomMm, 9);
  });
  it('comes to labels of common sizes (common practice, from memory)', () => {
    const sizes = startingGrids.map((grid) => {
      const { widthMm, heightMm } = labelSize(grid)!;
      return [widthMm, heightMm].map((mm) => Math.round(mm * 10) / 10).join(' x ');
    });
    // 4 by 2, 4 by 1, 2 5/8 by 1 and 1 3/4 by 1/2 inches are 101.6 x 50.8, 101.6 x 25.4, 66.7 x 25.4 and 44.5 x 12.7 mm.
    expect(sizes).toEqual([
      '99.1 x 38.1',
      '63.5 x 38.1',
      '70 x 37',
      '38.1 x 21.2',
      '101.6 x 50.8',
      '101.6 x 25.4',
      '66.7 x 25.4',
      '44.5 x 12.7',
    ]);
  });
});
