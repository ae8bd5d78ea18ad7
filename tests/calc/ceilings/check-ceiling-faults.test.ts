import { describe, expect, it } from 'vitest';
import { checkCeilingFaults } from '../../../src/calc/ceilings/check-ceiling-faults';
import { layOutCeilings } from '../../../src/calc/ceilings/lay-out-ceilings';
import { layOutWalls } from '../../../src/calc/walls/lay-out-walls';
import type { Ceiling } from '../../../src/plan/ceiling';
import { plainPanel } from '../panels/plain-panel';
import { plainWall } from '../walls/plain-wall';
import { plainCeiling } from './plain-ceiling';

const panels = [plainPanel('p1'), plainPanel('dust', { size: { widthMm: 0.1, heightMm: 0.1 } })];
const shapes = new Map(panels.map((panel) => [panel.id, panel]));
const check = (ceilings: Ceiling[], wall = plainWall(10, 0)) => {
  const walls = layOutWalls([wall], panels);
  return checkCeilingFaults(ceilings, shapes, walls, layOutCeilings(ceilings, panels, walls));
};

describe('checkCeilingFaults', () => {
  it('has nothing to say of ceilings with panels', () => {
    expect(check([plainCeiling()])).toEqual([]);
  });

  it('stops at a panel that is not there, and at an outline that holds none', () => {
    expect(check([plainCeiling({ panelId: 'gone' })])).toMatchObject([
      { id: 'ceilings.panel-missing.B', severity: 'stop', where: [{ name: 'B' }, { name: 'ceilings[0].panelId' }] },
    ]);
    expect(check([plainCeiling({ outline: { kind: 'circle', diameterMm: 400 } })])).toMatchObject([
      { id: 'ceilings.no-panels.B', severity: 'stop', measured: 0 },
    ]);
  });

  it('stops where the plan has no panels left for it, and where the lattice is too fine to look at', () => {
    expect(check([plainCeiling()], plainWall(2500, 0, 100))).toMatchObject([
      { id: 'ceilings.too-many.B', measured: 12, limit: 0 },
    ]);
    expect(check([plainCeiling({ panelId: 'dust' })])).toMatchObject([{ id: 'ceilings.too-many.B', measured: null }]);
  });
});
