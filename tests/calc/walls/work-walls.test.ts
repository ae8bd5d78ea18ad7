import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutWalls } from '../../../src/calc/walls/lay-out-walls';
import { workWalls } from '../../../src/calc/walls/work-walls';
import type { Panel } from '../../../src/plan/panel';
import type { Wall } from '../../../src/plan/wall';
import { wallArbitrary } from '../../arbitraries/wall';
import { plainPanel } from '../panels/plain-panel';
import { expectStepsHold } from '../ports/expect-steps-hold';
import { plainSegment, plainWall } from './plain-wall';

const work = (walls: readonly Wall[], panels: readonly Panel[] = [plainPanel('p1')]) =>
  workWalls(walls, panels, layOutWalls(walls, panels));
const value = (steps: ReturnType<typeof work>, figure: string) => steps.find((step) => step.figure === figure)?.value;

describe('workWalls', () => {
  it('shows every figure of a ring, by walking and by the regular polygon', () => {
    const steps = work([plainWall(136, 2.5, 13)]);
    expectStepsHold(steps);
    expect(steps.map((step) => step.figure)).toEqual([
      'columns of A',
      'rows of A',
      'panels of A',
      'height of A',
      'area of A',
      'pixels of A',
      'turn of A',
      'inside diameter of A',
      'inside diameter of A, as a regular polygon',
      'radius over the corners of A, as a regular polygon',
      'how far the middles of the columns of A stand inside its corners, as a regular polygon',
      'greatest distance of A from its circle of best fit',
      'opening of A',
      'opening of A, as a chord',
      'widest seam of A',
    ]);
    // Source: fixtures/reference/geometry.json, 500 mm at 2.5 degrees.
    expect(value(steps, 'radius over the corners of A, as a regular polygon')).toBeCloseTo(11460.064978748562, 6);
    expect(value(steps, 'inside diameter of A, as a regular polygon')).toBeCloseTo(2 * 11457.337793621136, 6);
    expect(value(steps, 'inside diameter of A')).toBeCloseTo(2 * 11457.337793621136, 5);
    expect(value(steps, 'opening of A, as a chord')).toBeCloseTo(value(steps, 'opening of A')!, 5);
  });

  it('holds for unlike bands, holes, mixed joints and convex seams', () => {
    const panels = [
      plainPanel('p1', { size: { bevelled: true, depthMm: 100 } }),
      plainPanel('tall', { size: { heightMm: 1000 } }),
    ];
    const wall = plainWall(1, 0, 1, {
      path: [
        plainSegment('a', 9, 2.5, { mixed: { jointDeg: 5, count: 3 } }),
        plainSegment('b', 5, -10, { jointBeforeDeg: 2.5 }),
      ],
      bands: [
        { id: 'x', panelId: 'p1', rows: 3, turnDeg: 180 },
        { id: 'y', panelId: 'tall', rows: 2, turnDeg: 0 },
      ],
      holes: [{ id: 'h', name: 'Door', segmentId: 'a', column: 2, row: 1, columns: 2, rows: 2 }],
    });
    const steps = work([wall], panels);
    expectStepsHold(steps);
    expect(value(steps, 'height of A')).toBe(3500);
    // Only the unbevelled panel, 80 deep, opens the convex seam: 160 sin 5 degrees.
    expect(value(steps, 'widest seam of A')).toBeCloseTo(160 * Math.sin((5 * Math.PI) / 180), 9);
    expect(steps.find((step) => step.figure === 'widest seam of A')!.numbers.depth).toBe(80);
  });

  it('shows nothing of a wall that cannot be laid out, and no diameter of a flat one', () => {
    expect(work([plainWall(3, 0, 1, { bands: [{ id: 'b', panelId: 'gone', rows: 1, turnDeg: 0 }] })])).toEqual([]);
    expect(work([plainWall(3, 0)]).map((step) => step.symbol)).not.toContain('D');
  });

  it('prints lines that hold for any wall that the schema accepts', () => {
    fc.assert(
      fc.property(wallArbitrary, (wall) => {
        const steps = work([wall]);
        if (steps.length > 0) expectStepsHold(steps);
      }),
      { numRuns: 60 },
    );
  });
});
