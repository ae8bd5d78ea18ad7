import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { findBuilds } from '../../../src/calc/finder/find-builds';
import { applyCommand } from '../../../src/plan/commands';
import { emptyPlan } from '../../../src/plan/empty-plan';
import { plainWall } from '../walls/plain-wall';

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

test('findBuilds opens a ring for what must drive in: as wide where no opening is stated, first what lets it in', () => {
  const vehicle = { widthMm: 2600, heightMm: 4000 };
  const asking = (openingMm: number | null) => {
    const plan = wishing({ acrossMm: 20_000, heightMm: 6000, openingMm });
    return { ...plan, wish: { ...plan.wish, vehicle } };
  };
  for (const { builds } of findBuilds(asking(null))) {
    const [best] = builds;
    if (best === undefined) continue;
    expect(best).toMatchObject({ letsIn: true });
    expect(best.openingMm).toBeGreaterThanOrEqual(2600);
    expect(best.openingMm).toBeLessThan(2600 + 2000);
  }
  const { evaluate } = createEvaluator();
  for (const plan of [asking(null), asking(0)]) {
    for (const build of findBuilds(plan).flatMap(({ builds }) => builds.slice(0, 2))) {
      const outcome = applyCommand(plan, build.command);
      if ('refused' in outcome) throw new Error(outcome.refused);
      const check = evaluate(outcome.plan).checks.find(({ id }) => id === 'walls.way-in-width.A')!;
      expect(check.severity).toBe(build.letsIn ? 'pass' : 'stop');
    }
  }
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

test('findBuilds leaves the room in the hall that the check of the walls finds once the build stands', () => {
  const plan = wishing(
    { acrossMm: 20_000, heightMm: 6000, openingMm: 4000 },
    { lengthMm: 30_000, widthMm: 26_000, walkwayMm: 1500 },
  );
  const { evaluate } = createEvaluator();
  for (const { builds } of findBuilds(plan)) {
    const [build] = builds;
    if (build === undefined) continue;
    const outcome = applyCommand(plan, build.command);
    if ('refused' in outcome) throw new Error(outcome.refused);
    const check = evaluate(outcome.plan).checks.find(({ id }) => id === 'walls.hall-fit')!;
    expect(build.roomMm).toBeCloseTo(check.limit! - check.measured!, 6);
  }
});

test('findBuilds counts the room that other walls take', () => {
  const [panel] = empty.catalogue.panels;
  const plan = wishing({ form: 'flat', acrossMm: 6000, heightMm: 3000 }, { lengthMm: 20_000, widthMm: 20_000 });
  const other = plainWall(4, 0, 2, {
    id: 'other',
    letter: 'B',
    place: { xMm: 0, yMm: -8000, turnDeg: 0 },
    bands: [{ id: 'b1', panelId: panel!.id, rows: 2, turnDeg: 0 }],
  });
  const alone = { ...plan, walls: [plainWall(2, 0, 1, { id: 'first' })] };
  const beside = { ...plan, walls: [...alone.walls, other] };
  const roomOf = (given: typeof plan) =>
    findBuilds(given).find(({ panelId }) => panelId === panel!.id)!.builds[0]!.roomMm!;
  // Deep as the wall with its walkway: panel and 1200 mm leave nearly 19 m; from -8 m to the wall and its walkway over 9 m are taken.
  expect(roomOf(alone)).toBeCloseTo(20_000 - 6000, 6);
  expect(roomOf(beside)).toBeLessThan(20_000 - 8000 - 1200);
});

test('findBuilds puts what stands above the clear height of the hall after what does not', () => {
  // 2.7 m is nearer to 2.5 than to 3 m both ways; a clear height of 2.6 m leaves only the lower one.
  const [panel] = empty.catalogue.panels;
  const square = { ...panel!, size: { ...panel!.size, widthMm: 500, heightMm: 500 } };
  const plan = wishing({ form: 'flat', acrossMm: 6000, heightMm: 2900 }, { clearHeightMm: 2600 });
  const [found] = findBuilds({ ...plan, catalogue: { ...plan.catalogue, panels: [square] } });
  expect(found!.builds.map(({ heightMm, underHall }) => [heightMm, underHall])).toEqual([
    [2500, true],
    [3000, false],
  ]);
});

test('findBuilds lists what fits first, then the cheaper wall, a wall without a price last', () => {
  const [panel] = empty.catalogue.panels;
  const priced = (id: string, price: number | null, highestStackMm: number | null = null) => ({
    ...panel!,
    id,
    lock: { ...panel!.lock, highestStackMm },
    purchase: { ...panel!.purchase, price },
  });
  const panels = [priced('none', null), priced('low', 10, 1000), priced('dear', 900), priced('cheap', 100)];
  const plan = wishing({ form: 'flat', acrossMm: 6000, heightMm: 3000 });
  const found = findBuilds({ ...plan, catalogue: { ...plan.catalogue, panels } });
  expect(found.map(({ panelId }) => panelId)).toEqual(['cheap', 'dear', 'none', 'low']);
});

test('findBuilds counts no panel where the wall has a hole that comes along', () => {
  const [panel] = empty.catalogue.panels;
  const size = { ...panel!.size, widthMm: 500, heightMm: 500 };
  const plan = wishing({ form: 'flat', acrossMm: 6000, heightMm: 3000 });
  const hole = { id: 'door', name: 'Door', segmentId: 's1', column: 3, columns: 2, row: 1, rows: 4 };
  const [found] = findBuilds({
    ...plan,
    walls: [plainWall(4, 0, 6, { holes: [hole] })],
    catalogue: { ...plan.catalogue, panels: [{ ...panel!, id: 'p1', size }] },
  });
  // 12 x 6 without the 2 x 4 of the door.
  expect(found!.builds[0]!.panels).toBe(64);
});
