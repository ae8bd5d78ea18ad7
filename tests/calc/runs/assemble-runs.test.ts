import fc from 'fast-check';
import { expect, test } from 'vitest';
import { assembleRuns } from '../../../src/calc/runs/assemble-runs';
import { wireStage } from '../../../src/calc/runs/wire-stage';
import { panelAt } from '../../../src/calc/surfaces/panel-at';
import { plainProcessor, plainSignal } from '../ports/plain-items';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';
import { type PlainRuns, plainRuns } from './plain-runs';

const bands = [{ type: plainType(216), rows: 3 }];
const assemble = (rest: PlainRuns) => {
  const given = plainRuns(rest);
  return { given, ...assembleRuns(wireStage(given).zones, given.surfaces) };
};

test('assembleRuns numbers ports through the breakouts of each processor and panels through all surfaces', () => {
  const own = { surfaceId: 'a', processorId: 'proc', nodeId: null, zoneColumnsMost: 12, returns: null, zonesUp: null };
  const surfaces = setOf(
    plainSurface({ letter: 'A', columns: 24, bands }),
    plainSurface({ letter: 'B', kind: 'ceiling', columns: 2, bands }),
  );
  const { runs, order, runOf, placeOf, given } = assemble({ surfaces, signal: plainSignal({ bySurface: [own] }) });
  expect(runs).toHaveLength(26);
  expect(runs.map(({ port }) => port).slice(8, 14)).toEqual(['1A-09', '1A-10', '1B-01', '1B-02', '2A-01', '2A-02']);
  expect(runs.at(-1)).toMatchObject({ port: '3A-02', surfaceId: 'b', zone: 2 });
  const names = (run: number) =>
    [...order.subarray(runs[run]!.start, runs[run]!.start + runs[run]!.count)].map(
      (panel) => panelAt(given.surfaces, panel)!.name,
    );
  expect(names(12)).toEqual(['A C13 R1', 'A C13 R2', 'A C13 R3']);
  expect(names(25)).toEqual(['B C2 R1', 'B C2 R2', 'B C2 R3']);
  expect(runOf[order[38]!]).toBe(12);
  expect(placeOf[order[38]!]).toBe(3);
});

test('assembleRuns names the letter of a single breakout too', () => {
  const one = plainProcessor({}, { outlets: { kind: 'breakouts', breakoutId: 'box', most: 1 } });
  expect(assemble({ processors: [one] }).runs[0]?.port).toBe('1A-01');
});

test('assembleRuns weighs a run against the capacity before the free share, and measures its entry', () => {
  const direct = plainProcessor({}, { outlets: { kind: 'direct', ports: 16 } });
  const { runs } = assemble({ wall: plainSurface({ columns: 1, bands, baseMm: 2000 }), processors: [direct] });
  // 3 x 46,656 of 650,000; the lowest panel stands on a base of two metres, within 2.1.
  expect(runs).toEqual([
    {
      surfaceId: 'a',
      zone: 0,
      port: '1-01',
      start: 0,
      count: 3,
      pixels: 139_968,
      share: 139_968 / 650_000,
      entryHeightMm: 2000,
      inReach: true,
      returnPort: null,
      returnProcessor: null,
      // The third panel up of 0.5 m, on a base of 2 m.
      exitHeightMm: 3000,
    },
  ]);
  expect(assemble({ wall: plainSurface({ columns: 1, bands, baseMm: 2101 }) }).runs[0]?.inReach).toBe(false);
});

test('assembleRuns: every panel is on exactly one run at one place, and the pixels of the runs sum to the stage', () => {
  const hole = fc.array(fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 7 })), { maxLength: 20 });
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 7 }), hole, (columns, rows, holes) => {
      const isHole = (c: number, r: number) => holes.some(([hc, hr]) => hc === c && hr === r);
      const surfaces = setOf(
        plainSurface({ letter: 'A', columns, bands: [{ type: plainType(216), rows }], isHole }),
        plainSurface({ letter: 'B', kind: 'ceiling', columns: rows, bands: [{ type: plainType(216), rows: columns }] }),
      );
      const { runs, order, runOf, placeOf } = assemble({ surfaces });
      expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: surfaces.total }, (_, panel) => panel));
      for (let panel = 0; panel < surfaces.total; panel++) {
        const run = runs[runOf[panel]!]!;
        expect(order[run.start + placeOf[panel]! - 1]).toBe(panel);
      }
      expect(runs.reduce((sum, { pixels }) => sum + pixels, 0)).toBe(surfaces.total * 46_656);
      expect(new Set(runs.map(({ port }) => port)).size).toBe(runs.length);
    }),
  );
});
