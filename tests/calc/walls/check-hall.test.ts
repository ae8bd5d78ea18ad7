import { describe, expect, it } from 'vitest';
import { checkHall } from '../../../src/calc/walls/check-hall';
import { judgeWall } from './judge-wall';
import { plainWall } from './plain-wall';

const hall = { lengthMm: 30_000, widthMm: 26_000, clearHeightMm: 9000, walkwayMm: 1200 };
const ring = judgeWall(plainWall(136, 2.5, 13));
const find = (checks: ReturnType<typeof checkHall>, id: string) => checks.find((check) => check.id === id)!;

describe('checkHall', () => {
  it('passes a ring with its walkway in a hall that has room', () => {
    // Walkway edge of a column: 11457.338 + 80 + 1200 = 12737.338 from the middle. The hall's width takes the way through
    // the opening: on top a corner at 1.25 degrees, 12737.338 cos 1.25 + 250 sin 1.25 = 12739.761; below the last column,
    // four columns and a half from the bottom, 12737.338 cos 11.25 + 250 sin 11.25 = 12541.365.
    const fit = find(checkHall([ring], hall), 'walls.hall-fit');
    expect(fit).toMatchObject({ severity: 'pass', limit: 26_000 });
    expect(fit.measured).toBeCloseTo(12739.761 + 12541.365, 2);
  });

  it('stops where the walkway no longer fits', () => {
    expect(find(checkHall([ring], { ...hall, walkwayMm: 1600 }), 'walls.hall-fit')).toMatchObject({
      severity: 'stop',
      limit: 26_000,
    });
  });

  it('reads a hall of no stated size as not stated', () => {
    const found = checkHall([ring], { ...hall, widthMm: null, clearHeightMm: null });
    expect(find(found, 'walls.hall-fit')).toMatchObject({ severity: 'offer', limit: null });
    expect(find(found, 'walls.clear-height.A')).toMatchObject({ severity: 'offer', limit: null, measured: 6500 });
  });

  it('holds the top of each wall, base included, under the clear height', () => {
    const high = judgeWall(plainWall(4, 0, 13, { baseMm: 2500 }));
    expect(find(checkHall([high], hall), 'walls.clear-height.A')).toMatchObject({ severity: 'pass', measured: 9000 });
    const over = judgeWall(plainWall(4, 0, 13, { baseMm: 2500.001 }));
    const check = find(checkHall([over], hall), 'walls.clear-height.A');
    expect(check).toMatchObject({ severity: 'stop', measured: 9000.001 });
    expect(check.fix!.command.args).toMatchObject({ fields: [{ path: ['walls', 0, 'baseMm'], value: 2500 }] });
  });

  it('has no fix where the wall alone is too high', () => {
    expect(find(checkHall([judgeWall(plainWall(4, 0, 20))], hall), 'walls.clear-height.A').fix).toBeUndefined();
  });

  it('says nothing without walls', () => {
    expect(checkHall([], hall)).toEqual([]);
  });
});
