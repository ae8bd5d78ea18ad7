import { expect, test } from 'vitest';
import { listThings } from '../../../../src/calc/log/list-things';
import { stateOfLog } from '../../../../src/calc/log/log-state';
import type { TickedKind } from '../../../../src/plan/build-log';
import { neighbourThings } from '../../../../src/ui/chapters/log/neighbour-things';
import { stageFixture } from '../../../arbitraries/evaluation-fixture';

const stage = stageFixture({ columns: 4, rows: 3, jointDeg: 5, ceilingDiameterMm: 1500 });
const state = stateOfLog(stage.surfaces, listThings(stage), { ticks: [] });

function beside(of: TickedKind, name: string, from: 'behind' | 'inside') {
  const thing = state[of].find((one) => one.name === name)!;
  const { left, right } = neighbourThings(stage.surfaces, state, thing, from);
  return [left?.name, right?.name];
}

test('neighbourThings of a column stand as one sees them: from behind the next one is at the left hand', () => {
  expect(beside('column', 'A C2', 'inside')).toEqual(['A C1', 'A C3']);
  expect(beside('column', 'A C2', 'behind')).toEqual(['A C3', 'A C1']);
});

test('neighbourThings end with the surface: the column beside the last of a wall is none of the ceiling', () => {
  expect(beside('column', 'A C4', 'inside')).toEqual(['A C3', undefined]);
  expect(beside('column', 'B C1', 'behind')).toEqual([undefined, 'B C2']);
});

test('neighbourThings of ports and circuits go by their numbers from either side', () => {
  expect(beside('circuit', 'D1-2', 'behind')).toEqual(['D1-1', 'D1-3']);
  expect(beside('port', '1A-01', 'inside')).toEqual([undefined, '1A-02']);
});
