import { expect, test } from 'vitest';
import { computeRuns } from '../../../src/calc/runs/compute-runs';
import { wireStage } from '../../../src/calc/runs/wire-stage';
import { workRuns } from '../../../src/calc/runs/work-runs';
import { expectStepsHold } from '../ports/expect-steps-hold';
import { plainSignal } from '../ports/plain-items';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';
import { type PlainRuns, plainRuns } from './plain-runs';

const work = (rest: PlainRuns) => {
  const given = plainRuns(rest);
  return workRuns(given, computeRuns(given, wireStage(given)));
};
const bands = [{ type: plainType(216), rows: 3 }];

test('workRuns adds up the ports of the zones, of the surfaces and of the stage', () => {
  const own = { surfaceId: 'a', processorId: 'proc', nodeId: null, zoneColumnsMost: 4, returns: null, zonesUp: null };
  const surfaces = setOf(
    plainSurface({ letter: 'A', columns: 10, bands }),
    plainSurface({ letter: 'B', columns: 2, bands }),
  );
  const steps = work({ surfaces, signal: plainSignal({ bySurface: [own] }) });
  expectStepsHold(steps);
  // Zones of four, four and two columns.
  expect(steps[0]).toMatchObject({
    figure: 'ports used on A',
    expression: 'zones1 * ports1 + zones2 * ports2',
    numbers: { zones1: 2, ports1: 4, zones2: 1, ports2: 2 },
    value: 10,
  });
  expect(steps.map(({ figure }) => figure)).toEqual([
    'ports used on A',
    'least ports on A',
    'fullest port of A, 1A-01',
    'ports used on B',
    'least ports on B',
    'fullest port of B, 4A-01',
    'ports used',
    'least ports',
  ]);
});

test('workRuns adds no surfaces where there is one, and prints nothing without a run', () => {
  expect(work({}).map(({ figure }) => figure)).not.toContain('ports used');
  expectStepsHold(work({}));
  expect(work({ signal: plainSignal({ processorId: null }) })).toEqual([]);
});
