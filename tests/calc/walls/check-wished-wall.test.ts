import { describe, expect, it } from 'vitest';
import { checkWishedWall } from '../../../src/calc/walls/check-wished-wall';
import { judgeWall } from './judge-wall';
import { plainWall } from './plain-wall';

const ring = judgeWall(plainWall(136, 2.5, 13));
const flat = judgeWall(plainWall(20, 0, 8));
const none = { form: 'ring', acrossMm: null, heightMm: null, openingMm: null } as const;
const severities = (checks: ReturnType<typeof checkWishedWall>) => checks.map((check) => [check.id, check.severity]);

describe('checkWishedWall', () => {
  it('passes a ring that comes within a column, a row and two per cent of the wish', () => {
    const wished = { ...none, acrossMm: 23_400, heightMm: 6200, openingMm: 4000 };
    expect(severities(checkWishedWall(ring, wished))).toEqual([
      ['walls.wished-across', 'pass'],
      ['walls.wished-height', 'pass'],
      ['walls.wished-opening', 'pass'],
    ]);
  });

  it('watches one that does not, and says both', () => {
    const wished = { ...none, acrossMm: 20_000, heightMm: 5900, openingMm: 5000 };
    const checks = checkWishedWall(ring, wished);
    expect(new Set(checks.map((check) => check.severity))).toEqual(new Set(['watch']));
    expect(checks[1]).toMatchObject({ measured: 6500, limit: 5900 });
    expect(checks[0]!.where).toEqual([
      { kind: 'surface', name: 'A' },
      { kind: 'field', name: 'wish.wall.acrossMm' },
    ]);
  });

  it('measures a flat wall from end to end', () => {
    expect(checkWishedWall(flat, { ...none, form: 'flat', acrossMm: 10_400, openingMm: 3000 })).toMatchObject([
      { id: 'walls.wished-across', severity: 'pass', measured: 10_000, limit: 10_400 },
    ]);
    expect(checkWishedWall(flat, { ...none, form: 'flat', acrossMm: 10_600 })[0]!.severity).toBe('watch');
  });

  it('watches a ring that was wished and a flat wall that came', () => {
    expect(checkWishedWall(flat, { ...none, acrossMm: 20_000 })).toMatchObject([{ severity: 'watch', measured: null }]);
  });

  it('says nothing of wishes that nobody stated', () => {
    expect(checkWishedWall(ring, none)).toEqual([]);
  });
});
