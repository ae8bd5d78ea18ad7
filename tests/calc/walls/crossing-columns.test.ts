import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { columnFootprints } from '../../../src/calc/walls/column-footprints';
import { crossingColumns } from '../../../src/calc/walls/crossing-columns';
import { footprintsOverlap } from '../../../src/calc/walls/footprints-overlap';
import { walkPath } from '../../../src/calc/walls/walk-path';

function footprints(joints: readonly number[], columnWidthMm = 500, depthMm = 80) {
  const jointDeg = Float64Array.from([0, ...joints]);
  const { frontMm } = walkPath({ jointDeg, columnWidthMm, depthMm, unbevelledMm: depthMm, turnDeg: 0 });
  return columnFootprints(frontMm, jointDeg, depthMm, depthMm);
}
const even = (columns: number, joint: number) => footprints(new Array<number>(columns - 1).fill(joint));

describe('crossingColumns', () => {
  it('finds none in a ring that just closes, and one too many in the next', () => {
    expect(crossingColumns(even(144, 2.5), 50)).toEqual({ crossings: [], complete: true });
    expect(crossingColumns(even(145, 2.5), 50).crossings).toEqual([{ column: 144, earlier: 0 }]);
    expect(crossingColumns(even(150, 2.5), 50).crossings).toHaveLength(6);
  });

  it('finds none in a flat wall, a square or an S', () => {
    expect(crossingColumns(even(50, 0), 50).crossings).toEqual([]);
    expect(crossingColumns(even(4, 90), 50).crossings).toEqual([]);
    expect(crossingColumns(footprints([...Array(11).fill(10), ...Array(11).fill(-10)]), 50).crossings).toEqual([]);
  });

  it('stops at as many as are asked for', () => {
    expect(crossingColumns(even(300, 2.5), 20).crossings).toHaveLength(20);
  });

  it('finds a column that crosses exactly where looking at every pair does', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(-40, -20, 0, 15, 30, 60, 90), { maxLength: 40 }), (joints) => {
        const corners = footprints(joints);
        const columns = joints.length + 1;
        const crossing = Array.from({ length: columns }, (_, c) =>
          Array.from({ length: Math.max(0, c - 1) }, (__, e) => footprintsOverlap(corners, c, e)).some(Boolean),
        ).flatMap((one, c) => (one ? [c] : []));
        expect(crossingColumns(corners, 1000).crossings.map(({ column }) => column)).toEqual(crossing);
      }),
      { numRuns: 300 },
    );
  });

  it('looks through thousands of columns, and gives up those that are far deeper than wide', () => {
    expect(crossingColumns(even(20_000, 0), 50)).toEqual({ crossings: [], complete: true });
    const hair = footprints(new Array<number>(9999).fill(0), 0.001, 1000);
    expect(crossingColumns(hair, 50)).toEqual({ crossings: [], complete: false });
  });
});
