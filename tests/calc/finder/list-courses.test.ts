import { expect, test } from 'vitest';
import { listCourses } from '../../../src/calc/finder/list-courses';
import { plainPanel } from '../panels/plain-panel';

const wished = { form: 'ring', acrossMm: 22_915, heightMm: 6500, openingMm: null } as const;
const square = plainPanel('p1', { size: { widthMm: 500 }, lock: { stepsDeg: [0, 2.5] } });

test('listCourses of a flat wall are both whole lengths, or one where the length is whole', () => {
  const flat = { ...wished, form: 'flat' } as const;
  expect(listCourses(flat, 6200, square).map(({ columns, missMm }) => [columns, missMm])).toEqual([
    [12, 200],
    [13, 300],
  ]);
  expect(listCourses(flat, 6000, square).map(({ columns, missMm }) => [columns, missMm])).toEqual([[12, 0]]);
});

test('listCourses takes an opening that nobody stated as closed', () => {
  // 360 / 2.5 = 144 columns close the ring; two neighbours of a closed ring touch.
  const [best] = listCourses(wished, 22_915, square);
  expect(best).toMatchObject({ columns: 144, path: [{ columns: 144, jointDeg: 2.5, mixed: null, jointBeforeDeg: 0 }] });
  expect(best!.openingMm).toBeCloseTo(0, 3);
  expect(listCourses({ ...wished, openingMm: 0 }, 22_915, square)).toEqual(listCourses(wished, 22_915, square));
});

test('listCourses of a ring whose lock bends no joint is empty', () => {
  expect(listCourses(wished, 22_915, plainPanel('p1', { size: { widthMm: 500 }, lock: { stepsDeg: [0] } }))).toEqual(
    [],
  );
});
