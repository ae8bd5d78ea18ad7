import { describe, expect, it } from 'vitest';
import { checkPitches } from '../../../src/calc/walls/check-pitches';
import { plainPanel } from '../panels/plain-panel';
import { judgeWall } from './judge-wall';
import { plainWall } from './plain-wall';

const bands = ['p1', 'p2'].map((panelId, i) => ({ id: `b${i}`, panelId, rows: 1, turnDeg: 0 as const }));

describe('checkPitches', () => {
  it('has nothing to say of bands with like pixels across', () => {
    const panels = [plainPanel('p1'), plainPanel('p2', { size: { heightMm: 1000 }, pixels: { high: 400 } })];
    expect(checkPitches(judgeWall(plainWall(3, 0, 1, { bands }), panels))).toEqual([]);
  });

  it('watches bands of unlike pixels across', () => {
    const panels = [plainPanel('p1'), plainPanel('p2', { pixels: { wide: 128, high: 128 } })];
    expect(checkPitches(judgeWall(plainWall(3, 0, 1, { bands }), panels))).toMatchObject([
      { id: 'walls.pitches.A', severity: 'watch', measured: 128, limit: 200, unit: 'px' },
    ]);
  });
});
