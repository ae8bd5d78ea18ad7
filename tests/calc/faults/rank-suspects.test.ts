import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CulpritKind, culpritKinds } from '../../../src/calc/faults/culprit';
import { culpritName } from '../../../src/calc/faults/culprit-words';
import { darkBy } from '../../../src/calc/faults/dark-by';
import { culpritsOf, type FaultModel, makeFaultModel } from '../../../src/calc/faults/fault-model';
import { rankSuspects } from '../../../src/calc/faults/rank-suspects';
import { stageFixture } from '../../arbitraries/evaluation-fixture';
import { smallStage } from './small-stage';

const named = (model: FaultModel, dark: readonly number[]) =>
  rankSuspects(model, dark).map(({ culprits, ...figures }) => ({
    names: culprits.map((culprit) => culpritName(model, culprit)),
    ...figures,
  }));

describe('rankSuspects', () => {
  const model = makeFaultModel(smallStage());

  it('names the cable before the box that darkens the same panels', () => {
    // Panels 1 and 2: the jumper into C1 R2, or C1 R2 itself.
    expect(named(model, [1, 2])[0]).toEqual({
      names: ['jumper C1 R1 to C1 R2', 'C1 R2'],
      match: 1,
      darkens: 2,
      hits: 2,
    });
    // All of run 1B-01: its home run, its first panel, its port, and breakout 1B with its trunk, which has no other port.
    expect(named(model, [6, 7, 8])[0]!.names).toEqual([
      'home run 1B-01',
      'C3 R1',
      'port 1B-01',
      'trunk 1B',
      'breakout 1B',
    ]);
  });

  it('finds the circuit where the dark panels cross the runs', () => {
    expect(named(model, [2, 5, 8, 11])[0]!.names).toEqual(['circuit D2-1', 'leg L3 of distro 2', 'distro 2', 'leg L3']);
  });

  it('gives near misses by how much of what is dark they share', () => {
    // Panels 0 and 1 are dark and 2 is not: nothing alone does that. Losing 0, 1, 2 matches 2 of 3; losing 1, 2 only 1 of 3;
    // losing the single panel C1 R3 none, so that it is not named.
    const found = named(model, [0, 1]);
    expect(found[0]).toMatchObject({ match: 2 / 3, darkens: 3, hits: 2 });
    expect(found[0]!.names[0]).toBe('home run 1A-01');
    expect(found.flatMap(({ names }) => names)).not.toContain('C1 R3');
    const matches = found.map(({ match }) => match);
    expect(matches).toEqual([...matches].sort((a, b) => b - a));
  });

  it('has nothing to say of no panels, nor of panels that are not there', () => {
    expect(rankSuspects(model, [])).toEqual([]);
    expect(rankSuspects(model, [-1, 12, 400])).toEqual([]);
  });
});

/** A wall and sometimes a ceiling with split wiring and a circuit a column, some runs with a return on some breakout. */
const anyModel = fc
  .record({
    columns: fc.integer({ min: 1, max: 9 }),
    rows: fc.integer({ min: 1, max: 6 }),
    zoneColumns: fc.integer({ min: 1, max: 6 }),
    splitAboveRow: fc.integer({ min: 0, max: 6 }),
    ceiling: fc.boolean(),
    returns: fc.array(fc.constantFrom(null, '1A-90', '1Q-91', '9A-92'), { minLength: 1, maxLength: 5 }),
    passesUnpowered: fc.boolean(),
    shared: fc.boolean(),
  })
  .map(({ ceiling, returns, passesUnpowered, shared, ...options }) => {
    const parts = stageFixture({ ...options, jointDeg: 0, ...(ceiling ? { ceilingDiameterMm: 2500 } : {}) });
    return makeFaultModel({
      ...parts,
      runs: {
        ...parts.runs,
        runs: parts.runs.runs.map((run, i) => {
          const port = returns[i % returns.length] ?? null;
          return { ...run, returnPort: port === null ? null : `${port}${i}` };
        }),
      },
      nodes: {
        nodes: parts.zones.map((_, i) => ({ name: `N${i + 1}` })),
        nodeOfZone: parts.zones.map((_, i) => (shared ? Math.floor(i / 2) : i)),
      },
      passes: new Uint8Array(parts.surfaces.total).fill(passesUnpowered ? 1 : 0),
    });
  });

describe('a culprit that was planted', () => {
  it('stands in the first group when all that it darkens is picked, and matches it wholly', () => {
    fc.assert(
      fc.property(anyModel, fc.constantFrom(...culpritKinds), fc.nat(), (model, kind: CulpritKind, seed) => {
        const culprits = [...culpritsOf(model, kind)];
        if (culprits.length === 0) return;
        const planted = culprits[seed % culprits.length]!;
        const dark = darkBy(model, planted);
        if (dark.length === 0) return;
        const [first] = rankSuspects(model, dark);
        expect(first!.match).toBe(1);
        expect(first!.culprits).toContainEqual(planted);
      }),
      { numRuns: 300 },
    );
  });

  it('is found as if every part had been tried', () => {
    fc.assert(
      fc.property(anyModel, fc.array(fc.nat(), { minLength: 1, maxLength: 8 }), (model, seeds) => {
        const dark = new Set(seeds.map((seed) => seed % model.surfaces.total));
        expect(rankSuspects(model, dark)[0]?.match).toBe(bestByTrying(model, dark));
        expect(rankSuspects(model, dark).length).toBeLessThanOrEqual(5);
      }),
      { numRuns: 40 },
    );
  });

  it('is found among very many parts as well, some of them far from a match', () => {
    const parts = stageFixture({ columns: 30, rows: 10, jointDeg: 0, zoneColumns: 10 });
    const nodes = { nodes: [{ name: 'N1' }], nodeOfZone: [0, 0, 0] };
    const model = makeFaultModel({ ...parts, nodes, passes: new Uint8Array(300) });
    const runs = [...culpritsOf(model, 'home-run')];
    fc.assert(
      fc.property(fc.array(fc.nat(299), { minLength: 1, maxLength: 40 }), fc.nat(), (extra, seed) => {
        const dark = new Set([...extra, ...darkBy(model, runs[seed % runs.length]!)]);
        expect(rankSuspects(model, dark)[0]?.match).toBe(bestByTrying(model, dark));
      }),
      { numRuns: 25 },
    );
  });
});

/** The best match of any part, each of them tried. */
function bestByTrying(model: FaultModel, dark: ReadonlySet<number>): number {
  return culpritKinds
    .flatMap((kind) => [...culpritsOf(model, kind)])
    .map((culprit) => {
      const panels = darkBy(model, culprit);
      const hits = panels.filter((panel) => dark.has(panel)).length;
      return hits / (dark.size + panels.length - hits);
    })
    .reduce((most, match) => Math.max(most, match), 0);
}
