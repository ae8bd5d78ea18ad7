import { describe, expect, it } from 'vitest';
import { checkCeilingHoles } from '../../../src/calc/ceilings/check-ceiling-holes';
import { judgeCeiling, shapes } from './judge-ceiling';
import { plainCeiling } from './plain-ceiling';

const hole = (id: string, xMm: number) => ({ id, name: id, xMm, yMm: -250, widthMm: 500, depthMm: 500 });
const check = (...holes: ReturnType<typeof hole>[]) => checkCeilingHoles(judgeCeiling(plainCeiling({ holes })), shapes);

describe('checkCeilingHoles', () => {
  it('has nothing to say of holes that take panels away, two over the same ones too', () => {
    expect(check(hole('a', 0), hole('b', 0))).toEqual([]);
    // Beyond the panels on one side, over them on the other.
    const beyond = { ...hole('c', 900), yMm: -5000, widthMm: 9000, depthMm: 4500 };
    expect(check(beyond, { ...beyond, id: 'd', xMm: -9900 })).toEqual([]);
    expect(check()).toEqual([]);
  });

  it('watches holes beside the panels, and drops them', () => {
    const [found] = check(hole('a', 0), hole('touching', 1000), hole('far', 9000));
    expect(found).toMatchObject({ id: 'ceilings.hole-outside.B', severity: 'watch', measured: 2 });
    expect(found!.where.slice(1).map((place) => place.name)).toEqual(['ceilings[0].holes[1]', 'ceilings[0].holes[2]']);
    expect(found!.fix!.command.args).toMatchObject({
      fields: [{ path: ['ceilings', 0, 'holes'], value: [hole('a', 0)] }],
    });
  });
});
