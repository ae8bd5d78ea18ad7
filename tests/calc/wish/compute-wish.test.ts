import { describe, expect, it } from 'vitest';
import { computeWish } from '../../../src/calc/wish/compute-wish';
import { defaultWish } from '../../../src/plan/wish';
import { wallOf } from '../../arbitraries/wall-fixture';
import { wishInputs } from '../../arbitraries/wish-inputs';

const lineOf = (name: string, ...args: Parameters<typeof wishInputs>) =>
  computeWish(wishInputs(...args)).lines.find((line) => line.name === name);

describe('computeWish', () => {
  it('sets money and heat beside budget and cooling', () => {
    const wish = { budget: 200_000, coolingW: 50_000 };
    expect(lineOf('Budget', wish)).toMatchObject({ asked: 200_000, planned: 194_260, unit: 'money' });
    expect(lineOf('Cooling', wish)).toMatchObject({ asked: 50_000, planned: 61_300, unit: 'W' });
    expect(lineOf('Budget')).toMatchObject({ asked: null });
  });

  it('sets the fullest leg beside what the service points carry', () => {
    expect(lineOf('Supply, the fullest leg')).toMatchObject({ asked: 320, planned: 82, unit: 'A' });
    const power = { legs: [{ leg: 'L1' as const, currentA: 82, limitA: null }], worstLegA: null };
    expect(lineOf('Supply, the fullest leg', {}, { power })).toMatchObject({ asked: null, planned: null });
  });

  it('asks an opening of a ring alone', () => {
    const wish = { wall: { ...defaultWish.wall, form: 'flat' as const } };
    expect(lineOf('Opening')).toBeDefined();
    expect(lineOf('Opening', wish)).toBeUndefined();
  });

  it('sets the first wall beside the wished ring', () => {
    const wall = { ...wallOf({ columns: 10, rows: 4, jointDeg: 5 }), insideDiameterMm: 11_444, openingMm: 4000 };
    const wish = { wall: { form: 'ring' as const, acrossMm: 12_000, heightMm: 2500, openingMm: 3900 } };
    expect(lineOf('Inside diameter', wish, { wall })).toMatchObject({ asked: 12_000, planned: 11_444, unit: 'mm' });
    expect(lineOf('Height of the wall', wish, { wall })).toMatchObject({ asked: 2500, planned: wall.heightMm });
    expect(lineOf('Opening', wish, { wall })).toMatchObject({ asked: 3900, planned: 4000 });
  });

  it('measures a flat wall from end to end: ten columns of 500 mm', () => {
    const wall = wallOf({ columns: 10, rows: 4, jointDeg: 0 });
    const wish = { wall: { ...defaultWish.wall, form: 'flat' as const, acrossMm: 4800 } };
    expect(lineOf('Length of the wall', wish, { wall })!.planned).toBeCloseTo(5000, 6);
  });

  it('has no sizes without a wall', () => {
    expect(lineOf('Inside diameter')).toMatchObject({ planned: null });
    expect(lineOf('Height of the wall')).toMatchObject({ planned: null });
  });

  it('sets needed counts beside what is owned and can be had, where somebody stated it', () => {
    const stock = [
      { itemId: 'box', owned: 1, obtainable: 4 },
      { itemId: 'p', owned: null, obtainable: null },
      { itemId: 'unused', owned: 3, obtainable: 3 },
    ];
    const counts = computeWish(wishInputs({ stock })).lines.filter((line) => line.unit === 'count');
    expect(counts).toEqual([{ name: 'Item box', field: 'wish.stock[0]', asked: 5, planned: 2, unit: 'count' }]);
  });
});
