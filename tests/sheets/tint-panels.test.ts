import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { legTints, noTint, tintCount, tintPanels } from '../../src/sheets/tint-panels';
import { stageFixture } from '../arbitraries/evaluation-fixture';

describe('tintPanels', () => {
  it('leaves all panels plain without a tint', () => {
    const parts = stageFixture({ columns: 4, rows: 3, jointDeg: 0 });
    expect(new Set(tintPanels(parts, 'none'))).toEqual(new Set([noTint]));
  });
  it('gives each processor its tint, neighbours different ones', () => {
    const parts = stageFixture({ columns: 6, rows: 1, jointDeg: 0, zoneColumns: 2 });
    expect([...tintPanels(parts, 'processor')]).toEqual([0, 0, 1, 1, 2, 2]);
  });
  it('tints the same parts once for each tint', () => {
    const parts = stageFixture({ columns: 6, rows: 2, jointDeg: 0, zoneColumns: 2 });
    expect(tintPanels(parts, 'port')).toBe(tintPanels(parts, 'port'));
    expect(tintPanels(parts, 'processor')).not.toBe(tintPanels(parts, 'port'));
    const same = stageFixture({ columns: 6, rows: 2, jointDeg: 0, zoneColumns: 2 });
    expect(tintPanels(same, 'port')).toEqual(tintPanels(parts, 'port'));
  });
  it('gives each leg its tint', () => {
    const parts = stageFixture({ columns: 4, rows: 1, jointDeg: 0 });
    expect([...tintPanels(parts, 'leg')]).toEqual([legTints.L1, legTints.L2, legTints.L3, legTints.L1]);
    expect(new Set([legTints.L1, legTints.L2, legTints.L3]).size).toBe(3);
  });
  it('never gives two runs that touch the same tint, and one run one tint', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 1, max: 9 }),
        fc.integer({ min: 1, max: 5 }),
        fc.constantFrom('port' as const, 'circuit' as const),
        (columns, rows, split, tint) => {
          const parts = stageFixture({ columns, rows, jointDeg: 0, splitAboveRow: Math.min(split, rows) });
          const table = parts.surfaces.surfaces[0]!;
          const chainOf = tint === 'port' ? parts.runs.runOf : parts.power.circuitOf;
          const tints = tintPanels(parts, tint);
          for (let local = 0; local < table.count; local++) {
            expect(tints[local]).toBeLessThan(tintCount);
            const place = (table.column[local]! - 1) * rows + table.row[local]! - 1;
            const beside = [table.at[place + rows] ?? -1, table.row[local] === rows ? -1 : table.at[place + 1]!];
            for (const other of beside.filter((one) => one >= 0)) {
              expect(tints[local] === tints[other]).toBe(chainOf[local] === chainOf[other]);
            }
          }
        },
      ),
    );
  });
});
