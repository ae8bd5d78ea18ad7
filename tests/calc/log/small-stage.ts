import { listThings } from '../../../src/calc/log/list-things';
import { stateOfLog } from '../../../src/calc/log/log-state';
import type { BuildStep, Tick, TickedKind } from '../../../src/plan/build-log';
import { stageFixture } from '../../arbitraries/evaluation-fixture';

/**
 * A wall of 4 columns and 3 rows in two zones of two columns. Panels are numbered column by column from the floor: C1 has 0, 1
 * and 2. Ports 1A-01 and 1A-02 have rows 2 and 3 of C1 and C2, 1A-03 has row 1 of both; 2A-01 to 2A-03 the same of C3 and C4.
 * A circuit for each column, D1-1 to D1-4.
 */
export const smallStage = stageFixture({ columns: 4, rows: 3, jointDeg: 5, splitAboveRow: 1, zoneColumns: 2 });

/** The same wall as surface A beside a ceiling B. */
export const twoSurfaces = stageFixture({
  columns: 4,
  rows: 3,
  jointDeg: 5,
  splitAboveRow: 1,
  zoneColumns: 2,
  ceilingDiameterMm: 1500,
});

export function ticked(of: TickedKind, name: string, step: BuildStep, more: Partial<Tick> = {}): Tick {
  return { step, of, name, done: true, who: 'Ada', atMs: 1000, ...more };
}

export function stateWith(ticks: Tick[], stage = smallStage) {
  return stateOfLog(stage.surfaces, listThings(stage), { ticks });
}
