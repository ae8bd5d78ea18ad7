import fc from 'fast-check';
import { expect, test } from 'vitest';
import { figureCode, mirrorFigure } from '../../../../src/calc/runs/search/figure-code';

const rows = 7;
const codeOf = (places: readonly number[]) => figureCode(rows, Int32Array.from(places), 0, places.length);

/** Places of a run that begins at column 9, row 3, goes these ways, and may come by a panel twice: only its steps matter. */
const run = (steps: string, from = 9 * rows + 3) => {
  const places = [from];
  for (const step of steps) places.push(places.at(-1)! + { U: 1, D: -1, R: rows, L: -rows }[step]!);
  return places;
};

test('figureCode is the same wherever a run begins', () => {
  expect(codeOf(run('UUURDDD'))).toBe(codeOf(run('UUURDDD', 4 * rows)));
});

test('figureCode takes a run of a list', () => {
  expect(figureCode(rows, Int32Array.from([...run('UR'), ...run('UUL')]), 3, 7)).toBe(codeOf(run('UUL')));
});

test('figureCode tells apart all runs of up to eight panels, mirrored and turned ones too', () => {
  const all = [''];
  for (let i = 0; i < all.length; i++) {
    if (all[i]!.length < 7) for (const step of 'UDRL') all.push(all[i]! + step);
  }
  // 1 + 4 + 16 + .. + 4^7.
  expect(all).toHaveLength(21_845);
  expect(new Set(all.map((steps) => codeOf(run(steps)))).size).toBe(all.length);
});

test('mirrorFigure of a code is the code of the mirrored run', () => {
  const steps = fc.array(fc.constantFrom('U', 'D', 'R', 'L'), { maxLength: 60 });
  fc.assert(
    fc.property(steps, (ways) => {
      const mirrored = ways.map((way) => ({ U: 'U', D: 'D', R: 'L', L: 'R' })[way]!);
      expect(mirrorFigure(codeOf(run(ways.join(''))))).toBe(codeOf(run(mirrored.join(''))));
    }),
  );
});
