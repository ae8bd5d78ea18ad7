import { describe, expect, it } from 'vitest';
import { type LabelGrid, labelBox, labelSize } from '../../../src/sheets/labels/label-grid';

const plain: LabelGrid = {
  paper: 'a4',
  columns: 2,
  rows: 3,
  leftMm: 5,
  rightMm: 5,
  topMm: 10,
  bottomMm: 11,
  acrossMm: 2,
  downMm: 3,
};

describe('labelSize', () => {
  it('shares out what margins and gaps leave: (210 - 10 - 2) / 2 by (297 - 21 - 6) / 3', () => {
    expect(labelSize(plain)).toEqual({ widthMm: 99, heightMm: 90 });
  });
  it.each([{ columns: 40 }, { rows: 90 }, { leftMm: 200 }, { topMm: 300 }, { acrossMm: 198 }])(
    'is null where no room for a label is left: %j',
    (change) => expect(labelSize({ ...plain, ...change })).toBeNull(),
  );
});

describe('labelBox', () => {
  it('counts along the rows', () => {
    const size = labelSize(plain)!;
    expect(labelBox(plain, size, 0)).toEqual({ leftMm: 5, topMm: 10, rightMm: 104, bottomMm: 100 });
    expect(labelBox(plain, size, 3)).toEqual({ leftMm: 106, topMm: 103, rightMm: 205, bottomMm: 193 });
  });
});
