import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkCeilings } from '../../../src/calc/ceilings/check-ceilings';
import { layOutCeilings } from '../../../src/calc/ceilings/lay-out-ceilings';
import { setFieldsIn } from '../../../src/calc/set-fields-in';
import { layOutWalls } from '../../../src/calc/walls/lay-out-walls';
import type { Ceiling } from '../../../src/plan/ceiling';
import type { Panel } from '../../../src/plan/panel';
import { ceilingArbitrary } from '../../arbitraries/ceiling';
import { panelArbitrary } from '../../arbitraries/panel';
import { plainPanel } from '../panels/plain-panel';
import { expectFinite } from '../surfaces/expect-finite';
import { plainWall } from '../walls/plain-wall';
import { plainCeiling } from './plain-ceiling';

const hall = { lengthMm: 30_000, widthMm: 26_000, clearHeightMm: 8000, walkwayMm: 1200 };
const vehicle = { widthMm: 2600, heightMm: 4000 };
const check = (ceilings: readonly Ceiling[], panels: readonly Panel[] = [plainPanel('p1')]) => {
  const walls = layOutWalls([plainWall(68, 5, 10)], [plainPanel('p1')]);
  return checkCeilings(ceilings, panels, walls, layOutCeilings(ceilings, panels, walls), hall, vehicle);
};
const stops = (checks: ReturnType<typeof check>) =>
  checks.filter((one) => one.severity === 'stop').map((one) => one.id);

describe('checkCeilings', () => {
  it('judges room, gap and exits of a ceiling in a ring', () => {
    expect(check([plainCeiling()]).map((one) => [one.id, one.severity])).toEqual([
      ['ceilings.travel.B', 'pass'],
      ['ceilings.clear-height.B', 'pass'],
      ['ceilings.vehicle.B', 'pass'],
      ['ceilings.gap.B.A', 'pass'],
      ['ceilings.gap-width.B.A', 'offer'],
      ['ceilings.escape.B', 'watch'],
    ]);
  });

  it('says why a ceiling has no panels and nothing else of it', () => {
    expect(check([plainCeiling({ panelId: 'gone' })]).map((one) => one.id)).toEqual(['ceilings.panel-missing.B']);
    expect(check([])).toEqual([]);
  });

  it('gives fixes that clear their check and stop nothing else', () => {
    const ceilings = [
      plainCeiling({
        outline: { kind: 'circle', diameterMm: 11_600 },
        height: { trimMm: 9000, lowestMm: 4000, highestMm: 8500 },
        holes: [{ id: 'h', name: 'Hatch', xMm: 20_000, yMm: 0, widthMm: 500, depthMm: 500 }],
      }),
    ];
    const before = check(ceilings);
    const fixes = before.filter((one) => one.fix !== undefined);
    expect(fixes.map((one) => one.id)).toEqual([
      'ceilings.travel.B',
      'ceilings.clear-height.B',
      'ceilings.hole-outside.B',
      'ceilings.gap.B.A',
    ]);
    for (const { id, fix } of fixes) {
      const { args } = fix!.command as Extract<NonNullable<typeof fix>['command'], { name: 'set-fields' }>;
      const after = check(setFieldsIn({ ceilings }, args.fields).ceilings);
      expect(after.find((one) => one.id === id)?.severity ?? 'pass', id).toBe('pass');
      expect(stops(before)).toEqual(expect.arrayContaining(stops(after)));
    }
  });

  it('gives finite figures, unique ids and at most fifty places for any ceilings that the schema accepts', () => {
    const ceilings = fc.uniqueArray(ceilingArbitrary, { maxLength: 2, selector: (ceiling) => ceiling.letter });
    fc.assert(
      fc.property(ceilings, panelArbitrary(fc.constant('p1')), (made, panel) => {
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
