import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { computePower } from '../../../src/calc/power/compute-power';
import type { PowerResults } from '../../../src/calc/power/power-result';
import type { SurfaceSet } from '../../../src/calc/surfaces/surface-table';
import type { Power } from '../../../src/plan/power';
import {
  distroOf,
  powerOf,
  powerPanel,
  surfaceOf,
  surfaceSet,
  surfaceSetArbitrary,
} from '../../arbitraries/power-surfaces';

const panels = [powerPanel('p'), powerPanel('q', { fullWhiteW: 110, powerFactor: 0.9, blackW: 20 })];
const us: Partial<Power> = {
  supply: { kind: 'wye', legToNeutralV: 120, lowestShare: 1 },
  circuit: { ratedA: 20, usableShare: 0.8 },
};
const compute = (surfaces: SurfaceSet, changes: Partial<Power> = {}, signalLoadW = 0, distros = [distroOf()]) =>
  computePower({ power: powerOf({ distroId: 'distro', ...changes }), distros, panels, surfaces, signalLoadW });
const wall = (columns: number, rows: number) => surfaceSet(surfaceOf({ columns, rows }));
const amps = (results: PowerResults) => Object.fromEntries(results.legs.map((l) => [l.leg, l.currentA]));

describe('computePower', () => {
  it('a full-white wall of 1800 to 2200 panels of 150 W on 120/208 V reads the order of 900 A a leg (common practice, no source)', () => {
    for (const [columns, rows] of [
      [140, 13],
      [150, 14],
    ] as const) {
      for (const connection of ['leg-to-leg', 'leg-to-neutral'] as const) {
        const { worstLegA } = compute(wall(columns, rows), { ...us, connection, includesSignal: true }, 6000);
        expect(worstLegA).toBeGreaterThan(700);
        expect(worstLegA).toBeLessThan(1100);
      }
    }
  });

  it('balanced legs carry P / (3 V pf): 36 columns of 10 panels at 230 V', () => {
    // By hand: 54 kW / (3 x 230 V x 0.95) = 82.380 A on each leg, nothing on the neutral.
    const results = compute(wall(36, 10));
    expect(amps(results)).toEqual({
      L1: expect.closeTo(82.38, 2),
      L2: expect.closeTo(82.38, 2),
      L3: expect.closeTo(82.38, 2),
      N: 0,
    });
    expect(results.worstLegA).toBeCloseTo(82.38, 2);
  });

  it('feeds leg to leg with the same line current at the same watts: P / (sqrt 3 U pf)', () => {
    expect(amps(compute(wall(36, 10), { connection: 'leg-to-leg' })).L2).toBeCloseTo(82.38, 2);
  });

  it('sizes at the low end of the supply: 10 % less volts, 11 % more amperes, fewer panels a circuit', () => {
    const results = compute(wall(36, 10), { supply: { kind: 'wye', legToNeutralV: 230, lowestShare: 0.9 } });
    expect(amps(results).L1).toBeCloseTo(82.38 / 0.9, 1);
    expect(results.panelsACircuit).toEqual([{ panelId: 'p', panels: 16, currentA: expect.closeTo(0.7628, 4) }]);
  });

  it('names circuits by distro and number and gives each a leg in turn', () => {
    const { circuits, distros } = compute(wall(100, 13), {}, 0, [distroOf({ legA: 140 })]);
    expect(circuits.slice(0, 4).map((c) => [c.name, c.leg])).toEqual([
      ['D1-1', 'L1'],
      ['D1-2', 'L2'],
      ['D1-3', 'L3'],
      ['D1-4', 'L1'],
    ]);
    expect(circuits.at(-1)!.name).toBe('D3-32'); // 34, 34 and 32 circuits
    expect(distros.map((d) => [d.number, d.distroId, d.circuits])).toEqual([
      [1, 'distro', 34],
      [2, 'distro', 34],
      [3, 'distro', 32],
    ]);
  });

  it('gives the height of the entry panel lower edge, base included', () => {
    const upper = surfaceOf({ columns: 1, rows: 6, holds: (_, r) => r > 2 });
    expect(compute(surfaceSet(upper)).circuits[0]!.entryHeightMm).toBe(1000);
    const ceiling = surfaceOf({ columns: 1, rows: 2, kind: 'ceiling' });
    expect(compute(surfaceSet(ceiling)).circuits[0]!.entryHeightMm).toBe(6000);
  });

  it('signal equipment loads every leg only where it is on the same service, and is in the watts either way', () => {
    const without = compute(wall(36, 10), { includesSignal: false }, 3000);
    const on = compute(wall(36, 10), { includesSignal: true }, 3000);
    expect(without.maxW).toBe(57_000);
    expect(on.maxW).toBe(57_000);
    expect(without.worstLegA).toBeCloseTo(82.38, 2);
    expect(on.worstLegA).toBeCloseTo(82.38 + 3000 / (3 * 230 * 0.95), 2);
  });

  it('states loads at black, typical and full white: 30 + 0.3 x 0.5 x 120 = 48 W a panel', () => {
    const results = compute(wall(10, 10), { brightnessShare: 0.5 });
    expect(results.loads).toEqual([{ surfaceId: 'wall-1', blackW: 3000, typicalW: 4800, fullWhiteW: 15_000 }]);
    expect([results.blackW, results.typicalW, results.maxW]).toEqual([3000, 4800, 15_000]);
  });

  it('states legs typically: 30 + 0.3 x 0.5 x 120 = 48 W a panel, 48/150 of full white; signal equipment stays as it is', () => {
    const changes = { brightnessShare: 0.5, includesSignal: true };
    const typical = (signalW: number) => compute(wall(36, 10), changes, signalW).typicalLegs[0]!.currentA;
    expect(typical(0)).toBeCloseTo((82.38 * 48) / 150, 2);
    expect(typical(3000)).toBeCloseTo((82.38 * 48) / 150 + 3000 / (3 * 230 * 0.95), 2);
  });

  it('numbers panels through all surfaces', () => {
    const set = surfaceSet(surfaceOf({ columns: 2, rows: 3 }), surfaceOf({ columns: 2, rows: 2, surfaceId: 'b' }));
    const { circuits, order, circuitOf } = compute(set);
    const second = circuits.findIndex((c) => c.surfaceId === 'b');
    expect([...order.slice(circuits[second]!.start)]).toEqual([6, 7, 9, 8]);
    expect(circuitOf[6]).toBe(second);
  });

  it('says null for legs where the catalogue does not have a panel, and keeps it on a circuit', () => {
    const set = surfaceSet(surfaceOf({ columns: 2, rows: 2, rowPanel: () => 'gone' }));
    const results = compute(set);
    expect(results.worstLegA).toBeNull();
    expect(results.neutralA).toBeNull();
    expect([...results.circuitOf].every((c) => c >= 0)).toBe(true);
  });

  it('of an empty stage has no circuits and no amperes', () => {
    const results = compute(surfaceSet());
    expect(results).toMatchObject({ circuits: [], distros: [], worstLegA: 0, neutralA: 0, maxW: 0 });
  });

  it('needs a distro no less for a mirrored wall, and as many circuits', () => {
    const holed = (mirrored: boolean) =>
      surfaceSet(
        surfaceOf({ columns: 30, rows: 10, holds: (c, r) => (mirrored ? c < 22 || c > 26 : c < 5 || c > 9) || r > 4 }),
      );
    expect(compute(holed(true)).distros.length).toBe(compute(holed(false)).distros.length);
  });
});

const changesArbitrary: fc.Arbitrary<Partial<Power>> = fc.record({
  supply: fc.record({
    kind: fc.constantFrom('wye' as const, 'split-phase' as const),
    legToNeutralV: fc.constantFrom(100, 120, 230, 277),
    lowestShare: fc.double({ min: 0.5, max: 1, noNaN: true }),
  }),
  connection: fc.constantFrom('leg-to-neutral' as const, 'leg-to-leg' as const),
  circuit: fc.record({
    ratedA: fc.integer({ min: 1, max: 63 }),
    usableShare: fc.double({ min: 0.1, max: 1, noNaN: true }),
  }),
  distroId: fc.constantFrom('distro', 'gone', null),
  includesSignal: fc.boolean(),
});

describe('computePower, whatever the plan', () => {
  it('puts every panel on exactly one circuit, and parts make the whole', () => {
    fc.assert(
      fc.property(surfaceSetArbitrary, changesArbitrary, (set, changes) => {
        const results = compute(set, changes, 900, [distroOf({ circuits: 12, legA: 63 })]);
        expect([...results.order].sort((a, b) => a - b)).toEqual(Array.from({ length: set.total }, (_, i) => i));
        results.circuits.forEach((circuit, c) => {
          const own = results.order.subarray(circuit.start, circuit.start + circuit.count);
          expect([...own].every((panel) => results.circuitOf[panel] === c)).toBe(true);
        });
        const watts = results.circuits.reduce((sum, c) => sum + c.watts, 900);
        expect(watts).toBeCloseTo(results.maxW, 6);
        expect(new Set(results.circuits.map((c) => c.name)).size).toBe(results.circuits.length);
      }),
    );
  });

  it('holds no NaN and no infinity', () => {
    fc.assert(
      fc.property(surfaceSetArbitrary, changesArbitrary, (set, changes) => {
        const { order: _, circuitOf: __, ...rest } = compute(set, changes, 900);
        const figures: number[] = [];
        JSON.stringify(rest, (_key, value) => {
          if (typeof value === 'number') figures.push(value);
          return value;
        });
        expect(figures.every(Number.isFinite)).toBe(true);
      }),
    );
  });

  it('in a distro the worst leg stays within the average and one circuit; no distro above its circuits', () => {
    fc.assert(
      fc.property(surfaceSetArbitrary, changesArbitrary, (set, changes) => {
        const results = compute(set, { ...changes, distroId: 'distro' }, 0, [distroOf({ circuits: 12, legA: 63 })]);
        for (const distro of results.distros) {
          const own = results.circuits.filter((c) => c.distro === distro.number);
          const largest = Math.max(...own.map((c) => c.currentA));
          const legs = distro.legs.filter((l) => l.leg !== 'N').map((l) => l.currentA);
          const average = legs.reduce((a, b) => a + b) / legs.length;
          expect(Math.max(...legs)).toBeLessThanOrEqual(average + largest + 1e-6);
          expect(distro.circuits).toBeLessThanOrEqual(12);
          expect(own.length).toBe(distro.circuits);
        }
      }),
    );
  });

  it('evaluates twice to the same', () => {
    fc.assert(
      fc.property(surfaceSetArbitrary, changesArbitrary, (set, changes) => {
        expect(compute(set, changes)).toEqual(compute(set, changes));
      }),
      { numRuns: 20 },
    );
  });
});
