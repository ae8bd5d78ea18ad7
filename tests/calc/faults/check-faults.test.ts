import { describe, expect, it } from 'vitest';
import { checkFaults } from '../../../src/calc/faults/check-faults';
import type { FaultsResults, SurfaceWorst } from '../../../src/calc/faults/fault-result';

const worst = (panels: number): SurfaceWorst => ({
  surfaceId: 'w1',
  letter: 'A',
  name: 'processor 2',
  kind: 'processor',
  panels,
  panelsOfSurface: 100,
});
const results = (change: Partial<FaultsResults> = {}): FaultsResults => ({
  passes: new Uint8Array(0),
  worst: [],
  surfaces: [],
  runs: 0,
  runsWithReturn: 0,
  worstCut: null,
  ...change,
});

describe('checkFaults', () => {
  it('watches a surface of which one failure darkens more than half', () => {
    const [check] = checkFaults(null, results({ surfaces: [worst(51)] }));
    expect(check).toMatchObject({
      id: 'faults.surface.A',
      severity: 'watch',
      measured: 0.51,
      limit: 0.5,
      where: [{ kind: 'processor', name: 'processor 2' }],
    });
  });

  it('offers to state a limit where it is half or less: nobody said how much may go dark', () => {
    const [check] = checkFaults(null, results({ surfaces: [worst(50)] }));
    expect(check).toMatchObject({ severity: 'offer', measured: 0.5, limit: null });
    expect(check!.sentence).toContain('Not stated');
  });

  it('names places by kinds that a check knows', () => {
    const kinds = (['home-run', 'power-jumper', 'distro-leg', 'circuit'] as const).map((kind) => {
      const [check] = checkFaults(null, results({ surfaces: [{ ...worst(60), kind }] }));
      return check!.where[0]!.kind;
    });
    expect(kinds).toEqual(['port', 'jumper', 'leg', 'circuit']);
  });

  it('passes where no home run darkens a panel, and else says what the worst one does', () => {
    const cut = { port: '3B-04', panels: 18, panelsOfRun: 18 };
    const some = checkFaults(null, results({ runs: 9, runsWithReturn: 4, worstCut: cut }));
    expect(some).toMatchObject([
      { id: 'faults.cut', severity: 'offer', measured: 18, limit: null, where: [{ kind: 'port', name: '3B-04' }] },
    ]);
    expect(some[0]!.values).toMatchObject({ returns: { value: 4 }, runs: { value: 9 } });
    const none = checkFaults(null, results({ runs: 9, runsWithReturn: 9, worstCut: { ...cut, panels: 0 } }));
    expect(none).toMatchObject([{ severity: 'pass', measured: 0, limit: 0 }]);
  });

  it('says nothing of a stage without wiring', () => {
    expect(checkFaults(null, results())).toEqual([]);
  });
});
