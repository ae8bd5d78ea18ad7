import { describe, expect, it } from 'vitest';
import { computeFaults } from '../../../src/calc/faults/compute-faults';
import { smallStage } from './small-stage';

describe('computeFaults', () => {
  const { passes, ...stage } = smallStage();
  const results = computeFaults({ ...stage, panels: [] });

  it('says of the worst what it is, where, and what it costs', () => {
    // The longest losses of the 12 panels, by name: circuit D1-1 feeds the first row, behind which every run stands.
    expect(results.worst).toHaveLength(10);
    expect(results.worst[0]).toMatchObject({
      kind: 'circuit',
      name: 'circuit D1-1',
      where: 'distro 1, entry C1 R1',
      panels: 12,
      share: 1,
      panelsWithoutReturns: 12,
      surfaces: [{ panels: 12, share: 1 }],
    });
    expect([...results.passes]).toEqual([...passes]);
  });

  it('gives the worst of each surface by equipment, the smallest that does it', () => {
    // Of circuit, distro and node, which all lose 12, the circuit is the smallest.
    expect(results.surfaces).toMatchObject([{ name: 'circuit D1-1', panels: 12, panelsOfSurface: 12 }]);
  });

  it('counts runs that come back, and the worst cut with them', () => {
    expect(results).toMatchObject({
      runs: 4,
      runsWithReturn: 0,
      worstCut: { port: '1A-01', panels: 3, panelsOfRun: 3 },
    });
    const { passes: _, ...returned } = smallStage({ returnPorts: ['1B-02', '1B-03', '1A-03', '2A-02'] });
    const kept = computeFaults({ ...returned, panels: [] });
    expect(kept).toMatchObject({ runsWithReturn: 4, worstCut: { panels: 0 } });
    const processor = kept.worst.find(({ name }) => name === 'processor 1');
    expect(processor).toMatchObject({ panels: 9, panelsWithoutReturns: 9 });
  });

  it('tells what a failure would cost without returns', () => {
    const { passes: _, ...returned } = smallStage({ returnPorts: ['2A-02', null, null, null] });
    const { worst } = computeFaults({ ...returned, panels: [] });
    // Circuit D1-1 feeds the first row: behind it stand 8 panels, of which the return of the first run feeds C1 R2 and C1 R3.
    expect(worst.find(({ name }) => name === 'circuit D1-1')).toMatchObject({ panels: 10, panelsWithoutReturns: 12 });
  });

  it('of a stage without wiring has nothing, and nothing that is no number', () => {
    const none = { order: new Uint32Array(0) };
    const bare = computeFaults({
      ...stage,
      zones: [],
      runs: { runs: [], runOf: new Int32Array(12).fill(-1), ...none },
      nodes: { nodes: [], nodeOfZone: [] },
      power: { circuits: [], circuitOf: new Int32Array(12).fill(-1), ...none },
      panels: [],
    });
    // What is left to fail are the panels themselves.
    expect(bare).toMatchObject({ surfaces: [], runs: 0, runsWithReturn: 0, worstCut: null });
    expect(bare.worst.map(({ kind, panels }) => [kind, panels])).toEqual([
      ['panel', 1],
      ['panel', 1],
      ['panel', 1],
    ]);
    const empty = { surfaces: [], offsets: [], total: 0 };
    const runs = { runs: [], order: new Uint32Array(0), runOf: new Int32Array(0) };
    const power = { circuits: [], order: new Uint32Array(0), circuitOf: new Int32Array(0) };
    const nowhere = computeFaults({
      surfaces: empty,
      zones: [],
      runs,
      nodes: { nodes: [], nodeOfZone: [] },
      power,
      panels: [],
    });
    expect(nowhere).toMatchObject({ worst: [], surfaces: [], worstCut: null });
  });
});
