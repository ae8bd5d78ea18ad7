import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fanOut } from '../../../src/calc/nodes/fan-out';

test('fanOut feeds devices from one unit as long as its outlets suffice', () => {
  expect(fanOut(3, 4, 4)).toEqual({
    feeds: [null],
    devices: [
      { unit: 0, outlet: 1 },
      { unit: 0, outlet: 2 },
      { unit: 0, outlet: 3 },
    ],
  });
  expect(fanOut(0, 4, 4)).toEqual({ feeds: [], devices: [] });
});

test('fanOut spends an outlet on the next unit where one is short', () => {
  // Five devices on units of four: the second unit takes an outlet of the first, which leaves three and two.
  expect(fanOut(5, 4, 4)).toEqual({
    feeds: [null, { unit: 0, outlet: 1 }],
    devices: [
      { unit: 0, outlet: 2 },
      { unit: 0, outlet: 3 },
      { unit: 0, outlet: 4 },
      { unit: 1, outlet: 1 },
      { unit: 1, outlet: 2 },
    ],
  });
});

test('fanOut uses every outlet once, feeds a unit from an earlier one, and could not do with a unit less', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 300 }),
      fc.integer({ min: 2, max: 12 }),
      fc.integer({ min: 2, max: 12 }),
      (devices, first, others) => {
        const tree = fanOut(devices, first, others);
        expect(tree.devices).toHaveLength(devices);
        const used = [...tree.feeds.filter((feed) => feed !== null), ...tree.devices];
        expect(new Set(used.map(({ unit, outlet }) => `${unit}/${outlet}`)).size).toBe(used.length);
        for (const { unit, outlet } of used) {
          expect(unit).toBeLessThan(tree.feeds.length);
          expect(outlet >= 1 && outlet <= (unit === 0 ? first : others)).toBe(true);
        }
        tree.feeds.forEach((feed, unit) => {
          expect(unit === 0 ? feed : feed!.unit < unit).toBe(unit === 0 ? null : true);
        });
        // So many units have first + (units - 1) x others outlets, of which units - 1 feed the others.
        const room = (units: number) => first + (units - 1) * (others - 1);
        expect(room(tree.feeds.length)).toBeGreaterThanOrEqual(devices);
        if (tree.feeds.length > 1) expect(room(tree.feeds.length - 1)).toBeLessThan(devices);
      },
    ),
  );
});
