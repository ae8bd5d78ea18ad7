import { describe, expect, it } from 'vitest';
import { checkHeightLimit } from '../../../src/calc/walls/check-height-limit';
import { plainPanel } from '../panels/plain-panel';
import { judgeWall } from './judge-wall';
import { plainWall } from './plain-wall';

const lock = (highestStackMm: number | null, longestHangMm: number | null = null) => [
  plainPanel('p1', { lock: { highestStackMm, longestHangMm } }),
];

describe('checkHeightLimit', () => {
  it('passes a stack as high as the sheet allows, whatever it stands on', () => {
    const wall = plainWall(3, 0, 16, { baseMm: 2000 });
    expect(checkHeightLimit(judgeWall(wall, lock(8000)))).toMatchObject([
      { id: 'walls.stack.A', severity: 'pass', measured: 8000, limit: 8000 },
    ]);
  });

  it('stops a higher one and takes as many rows off the top as it must', () => {
    const [check] = checkHeightLimit(judgeWall(plainWall(3, 0, 17), lock(7600)));
    // 8500 against 7600: two rows of 500 off.
    expect(check).toMatchObject({ severity: 'stop', measured: 8500, limit: 7600 });
    expect(check!.fix!.command.args).toMatchObject({ fields: [{ path: ['walls', 0, 'bands', 0, 'rows'], value: 15 }] });
    // To be proved on the whole plan: rows may be too few for the zones asked for.
    expect(check!.fix!.otherwise).toBeNull();
  });

  it('has no fix where the top band alone does not do', () => {
    const bands = [8, 1].map((rows, i) => ({ id: `b${i}`, panelId: 'p1', rows, turnDeg: 0 as const }));
    const [check] = checkHeightLimit(judgeWall(plainWall(3, 0, 1, { bands }), lock(3000)));
    expect(check!.severity).toBe('stop');
    expect(check!.fix).toBeUndefined();
  });

  it('takes the hang for a wall that hangs, and the least of its panels', () => {
    const panels = [
      plainPanel('p1', { lock: { longestHangMm: 6000 } }),
      plainPanel('p2', { lock: { longestHangMm: 4000 } }),
    ];
    const bands = ['p1', 'p2'].map((panelId, i) => ({ id: `b${i}`, panelId, rows: 5, turnDeg: 0 as const }));
    const wall = plainWall(3, 0, 1, { support: 'hangs', bands });
    expect(checkHeightLimit(judgeWall(wall, panels))).toMatchObject([
      { id: 'walls.hang.A', severity: 'stop', measured: 5000, limit: 4000 },
    ]);
  });

  it('never passes a limit that a sheet leaves out', () => {
    expect(checkHeightLimit(judgeWall(plainWall(3, 0, 2), lock(null)))).toMatchObject([
      { severity: 'offer', limit: null, measured: 1000 },
    ]);
    const panels = [...lock(8000), plainPanel('p2', { lock: { highestStackMm: null } })];
    const bands = ['p1', 'p2'].map((panelId, i) => ({ id: `b${i}`, panelId, rows: 5, turnDeg: 0 as const }));
    expect(checkHeightLimit(judgeWall(plainWall(3, 0, 1, { bands }), panels))[0]).toMatchObject({ severity: 'offer' });
  });
});
