import fc from 'fast-check';
import { expect, test } from 'vitest';
import { areNeighbours } from '../../../../src/calc/runs/hand-changes/are-neighbours';
import { pathFrom } from '../../../../src/calc/runs/hand-changes/path-from';

const block = (columns: number, rows: number) => Array.from({ length: columns * rows }, (_, place) => place);

test('pathFrom finds a way through a block from any corner', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 5 }), (columns, rows) => {
      const places = block(columns, rows);
      for (const corner of [0, rows - 1, (columns - 1) * rows, columns * rows - 1]) {
        const path = pathFrom({ rows }, places, corner)!;
        expect(path[0]).toBe(corner);
        expect([...path].sort((a, b) => a - b)).toEqual(places);
        path.slice(1).forEach((next, i) => {
          expect(areNeighbours({ rows }, path[i]!, next)).toBe(true);
        });
      }
    }),
  );
});

// A board of 3 x 3 coloured like a chessboard has five squares of the corner's colour: no path through all begins beside one.
test('pathFrom is null where there is none', () => {
  expect(pathFrom({ rows: 3 }, block(3, 3), 1)).toBeNull();
  expect(pathFrom({ rows: 3 }, [0, 1, 5, 8], 0)).toBeNull();
});

test('pathFrom does not step over the edge of a column', () => {
  expect(pathFrom({ rows: 2 }, [0, 1, 2], 0)).toBeNull();
});

test('pathFrom gives up in time on a large region without a way', () => {
  // 15 x 15 from a panel of the rarer colour.
  expect(pathFrom({ rows: 15 }, block(15, 15), 1)).toBeNull();
});
