import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { setFieldsIn } from '../../../src/calc/set-fields-in';
import { checkWalls } from '../../../src/calc/walls/check-walls';
import { layOutWalls } from '../../../src/calc/walls/lay-out-walls';
import type { Panel } from '../../../src/plan/panel';
import type { Wall } from '../../../src/plan/wall';
import { panelArbitrary } from '../../arbitraries/panel';
import { wallArbitrary } from '../../arbitraries/wall';
import { plainPanel } from '../panels/plain-panel';
import { expectFinite } from '../surfaces/expect-finite';
import { plainSegment, plainWall } from './plain-wall';

const hall = { lengthMm: 30_000, widthMm: 26_000, clearHeightMm: 9000, walkwayMm: 1200 };
const vehicle = { widthMm: 2600, heightMm: 4000 };
const wished = { form: 'ring', acrossMm: 22_900, heightMm: 6500, openingMm: 4000 } as const;
const check = (walls: readonly Wall[], panels: readonly Panel[] = [plainPanel('p1')]) =>
  checkWalls(walls, panels, layOutWalls(walls, panels), hall, vehicle, wished);
const stops = (checks: ReturnType<typeof check>) =>
  checks.filter((one) => one.severity === 'stop').map((one) => one.id);

describe('checkWalls', () => {
  it('passes a ring that stands as it should', () => {
    const checks = check([plainWall(136, 2.5, 13)]);
    expect(checks.map((one) => one.id)).toEqual([
      'walls.joints.A',
      'walls.crossing.A',
      'walls.stack.A',
      'walls.way-in-width.A',
      'walls.hall-fit',
      'walls.clear-height.A',
      'walls.wished-across',
      'walls.wished-height',
      'walls.wished-opening',
    ]);
    expect(new Set(checks.map((one) => one.severity))).toEqual(new Set(['pass']));
  });

  it('offers the nearest joints where they make a wall that stands, and not where the path would cross itself', () => {
    const offered = check([plainWall(136, 2.4, 13)]).find((one) => one.id === 'walls.joints.A')!;
    expect(offered.fix).toBeDefined();
    // 148 columns at 2.4 degrees turn 352.8; at the nearest step, 2.5, they would turn 367.5.
    const withheld = check([plainWall(148, 2.4, 13)]).find((one) => one.id === 'walls.joints.A')!;
    expect(withheld.severity).toBe('stop');
    expect(withheld.fix).toBeUndefined();
  });

  it('judges every wall for itself, and the wish by the first', () => {
    const walls = [plainWall(136, 2.5, 13), plainWall(4, 2.4, 20, { id: 'b', letter: 'B' })];
    const found = check(walls);
    expect(stops(found)).toEqual(['walls.joints.B', 'walls.stack.B', 'walls.clear-height.B']);
    expect(found.filter((one) => one.id.startsWith('walls.wished'))).toHaveLength(3);
  });

  it('says why a wall cannot be laid out and nothing else of it', () => {
    const gone = plainWall(10, 2.4, 13, { bands: [{ id: 'b', panelId: 'gone', rows: 13, turnDeg: 0 }] });
    expect(check([gone]).map((one) => one.id)).toEqual(['walls.panel-missing.A']);
    expect(check([])).toEqual([]);
  });

  it('gives fixes that clear their check and stop nothing else, however many walls are wrong', () => {
    const walls = [
      plainWall(136, 2.4, 18, {
        baseMm: 4000,
        holes: [{ id: 'h', name: 'Door', segmentId: 's1', column: 135, row: 1, columns: 5, rows: 4 }],
      }),
      plainWall(1, 0, 1, {
        id: 'b',
        letter: 'B',
        path: [plainSegment('x', 3, 1, { mixed: { jointDeg: 9, count: 7 } }), plainSegment('y', 2, 3)],
      }),
    ];
    const before = check(walls);
    const fixes = before.filter((one) => one.fix !== undefined);
    expect(fixes.map((one) => one.id)).toEqual([
      'walls.joints.A',
      'walls.stack.A',
      'walls.hole-outside.A',
      'walls.joints.B',
      'walls.mixed-joints.B',
      'walls.clear-height.A',
    ]);
    for (const { id, fix } of fixes) {
      const { args } = fix!.command as Extract<NonNullable<typeof fix>['command'], { name: 'set-fields' }>;
      const after = check(setFieldsIn({ walls }, args.fields).walls);
      expect(after.find((one) => one.id === id)?.severity ?? 'pass', id).toBe('pass');
      expect(stops(before)).toEqual(expect.arrayContaining(stops(after)));
    }
  });

  it('gives finite figures, unique ids and at most fifty places for any walls that the schema accepts', () => {
    const walls = fc.uniqueArray(wallArbitrary, { maxLength: 3, selector: (wall) => wall.letter });
    fc.assert(
      fc.property(walls, panelArbitrary(fc.constant('p1')), (made, panel) => {
        const checks = check(made, [panel]);
        expect(new Set(checks.map((one) => one.id)).size).toBe(checks.length);
        for (const one of checks) {
          expectFinite(one, one.id);
          expect(one.where.length).toBeLessThanOrEqual(50);
          expect(one.where.length).toBeGreaterThan(0);
        }
      }),
      { numRuns: 60 },
    );
  });
});
