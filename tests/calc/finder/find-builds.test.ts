import { expect, test } from 'vitest';
import { findBuilds } from '../../../src/calc/finder/find-builds';
import { emptyPlan } from '../../../src/plan/empty-plan';

const empty = emptyPlan({ id: 'wish', name: 'Wish', lengths: 'metric' });
const wishing = (wall: Partial<typeof empty.wish.wall>, hall: Partial<typeof empty.wish.hall> = {}) => ({
  ...empty,
  wish: { ...empty.wish, hall: { ...empty.wish.hall, ...hall }, wall: { ...empty.wish.wall, ...wall } },
});

test('findBuilds answers a hall of 30 x 26 m, a ring of 20 m, 6 m high: nearest rings first, each within the hall', () => {
  const found = findBuilds(
    wishing({ acrossMm: 20_000, heightMm: 6000, openingMm: 4000 }, { lengthMm: 30_000, widthMm: 26_000 }),
  );
  expect(found).toHaveLength(empty.catalogue.panels.length);
  const best = found.flatMap(({ builds }) => builds.slice(0, 1));
  expect(best.length).toBeGreaterThan(0);
  for (const build of best) {
    expect(Math.abs(build.acrossMm - 20_000)).toBeLessThan(500);
    expect(build.panels).toBe(build.columns * build.rows);
    expect(build.roomMm).toBeGreaterThan(0);
  }
});

test('findBuilds finds the ring of 144 columns of 0.5 m with 2.5 degree joints, about 75 ft inside', () => {
  // common practice, no source; 0.5 / (2 tan 1.25 degrees) is 11,457 mm, twice that 22,915 mm = 75.2 ft.
  const [panel] = empty.catalogue.panels;
  const lock = { ...panel!.lock, stepsDeg: [0, 2.5] };
  const square = { ...panel!, size: { ...panel!.size, widthMm: 500, heightMm: 500 }, lock };
  const plan = wishing({ acrossMm: 22_915, heightMm: 6500, openingMm: 0 });
  const [found] = findBuilds({ ...plan, catalogue: { ...plan.catalogue, panels: [square] } });
  expect(found!.builds[0]).toMatchObject({ columns: 144, rows: 13, mixed: false });
  expect(found!.builds[0]!.acrossMm / 304.8).toBeCloseTo(75.2, 1);
});

test('findBuilds rounds a height between two rows both ways', () => {
  const found = findBuilds(wishing({ form: 'flat', acrossMm: 6000, heightMm: 2700 }));
  const square = found.find(({ builds }) => builds.some(({ heightMm }) => heightMm === 2500))!;
  expect(new Set(square.builds.map(({ heightMm }) => heightMm))).toEqual(new Set([2500, 3000]));
});

test('findBuilds of a wish without a size gives reasons and no build', () => {
  const found = findBuilds(empty);
  expect(found.every(({ builds, refused }) => builds.length === 0 && refused !== null)).toBe(true);
});
