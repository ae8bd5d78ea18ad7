import { describe, expect, it } from 'vitest';
import { drawIn } from '../../../src/calc/ceilings/draw-in';
import { layOutCeilings } from '../../../src/calc/ceilings/lay-out-ceilings';
import { setFieldsIn } from '../../../src/calc/set-fields-in';
import { layOutWalls } from '../../../src/calc/walls/lay-out-walls';
import type { Ceiling } from '../../../src/plan/ceiling';
import { plainWall } from '../walls/plain-wall';
import { panels, shapes } from './judge-ceiling';
import { plainCeiling } from './plain-ceiling';

const ring = layOutWalls([plainWall(72, 5)], panels);
const front = ring.walls[0]!.frontMm;
const gapOf = (ceiling: Ceiling) => layOutCeilings([ceiling], panels, ring).ceilings[0]!.gapLeastMm!;

describe('drawIn', () => {
  it('finds a smaller circle or rectangle that keeps the gap, with panels still in it', () => {
    for (const outline of [
      { kind: 'circle', diameterMm: 11_400 },
      { kind: 'rectangle', widthMm: 8000, depthMm: 8000 },
    ] as const) {
      for (const rule of ['whole', 'centre', 'any'] as const) {
        const ceiling = plainCeiling({ outline, rule });
        const fields = drawIn(ceiling, 0, shapes, front, 150)!;
        const drawn = setFieldsIn({ ceilings: [ceiling] }, fields).ceilings[0]!;
        expect(gapOf(drawn), `${outline.kind} ${rule}`).toBeGreaterThanOrEqual(150);
        expect(layOutCeilings([drawn], panels, ring).ceilings[0]!.table.count).toBeGreaterThan(100);
      }
    }
  });

  it('leaves an outline as it is that keeps the gap already', () => {
    expect(drawIn(plainCeiling(), 0, shapes, front, 150)).toEqual([
      { path: ['ceilings', 0, 'outline', 'widthMm'], value: 2000 },
      { path: ['ceilings', 0, 'outline', 'depthMm'], value: 1500 },
    ]);
  });

  it('gives up a polygon, and a ceiling that would have nothing left', () => {
    const points = [
      { xMm: 0, yMm: 0 },
      { xMm: 9000, yMm: 0 },
      { xMm: 0, yMm: 9000 },
    ];
    expect(drawIn(plainCeiling({ outline: { kind: 'polygon', points } }), 0, shapes, front, 150)).toBeNull();
    const through = layOutWalls([plainWall(6, 0)], panels).walls[0]!.frontMm;
    expect(drawIn(plainCeiling(), 0, shapes, through, 150)).toBeNull();
  });
});
