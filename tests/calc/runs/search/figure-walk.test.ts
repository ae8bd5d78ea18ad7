import fc from 'fast-check';
import { expect, test } from 'vitest';
import { FigureWalk, mirrorFigure } from '../../../../src/calc/runs/search/figure-walk';

const rows = 7;
function walk(places: readonly number[], from = 0, to = places.length): FigureWalk {
  const figure = new FigureWalk();
  figure.walk(rows, Int32Array.from(places), from, to);
  return figure;
}
const codeOf = (places: readonly number[]) => walk(places).code;

/** Places of a run that begins at column 9, row 3, goes these ways, and may come by a panel twice: only its steps matter. */
const run = (steps: string, from = 9 * rows + 3) => {
  const places = [from];
  for (const step of steps) places.push(places.at(-1)! + { U: 1, D: -1, R: rows, L: -rows }[step]!);
  return places;
};

test('FigureWalk has the same code wherever a run begins', () => {
  expect(codeOf(run('UUURDDD'))).toBe(codeOf(run('UUURDDD', 4 * rows)));
});

test('FigureWalk takes a run of a list, and counts its steps to the side', () => {
  expect(walk([...run('UR'), ...run('UUL')], 3, 7)).toEqual(walk(run('UUL')));
  expect(walk(run('URRDLU')).sideways).toBe(3);
  expect(walk(run('')).sideways).toBe(0);
});

test('FigureWalk tells apart all runs of up to eight panels, mirrored and turned ones too', () => {
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
