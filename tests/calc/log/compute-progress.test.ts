import fc from 'fast-check';
import { expect, test } from 'vitest';
import { computeProgress } from '../../../src/calc/log/compute-progress';
import { ticks } from '../../arbitraries/tick';
import { smallStage, stateWith, ticked, twoSurfaces } from './small-stage';

const progressOf = (log: Parameters<typeof stateWith>[0], stage = smallStage) =>
  computeProgress(stage.surfaces, stage.zones, stateWith(log, stage));

test('computeProgress counts standing columns, wired and tested ports and powered circuits by area', () => {
  const [stage, wall, left, right] = progressOf([
    ticked('column', 'C1', 'stands'),
    ticked('column', 'C2', 'stands'),
    ticked('column', 'C3', 'stands'),
    ticked('port', '1A-01', 'wired'),
    ticked('port', '2A-03', 'wired'),
    ticked('circuit', 'D1-1', 'powered'),
    ticked('port', '1A-01', 'tested'),
  ]);
  expect([stage, wall, left, right].map((area) => area?.name)).toEqual([
    'the stage',
    'A Wall',
    'processor 1',
    'processor 2',
  ]);
  const counts = (area: typeof stage) => area?.steps.map(({ of, done, total }) => [of, done, total]);
  expect(counts(stage)).toEqual([
    ['column', 3, 4],
    ['port', 2, 6],
    ['circuit', 1, 4],
    ['port', 1, 6],
  ]);
  expect(counts(wall)).toEqual(counts(stage));
  expect(counts(left)).toEqual([
    ['column', 2, 2],
    ['port', 1, 3],
    ['circuit', 1, 2],
    ['port', 1, 3],
  ]);
  expect(counts(right)).toEqual([
    ['column', 1, 2],
    ['port', 1, 3],
    ['circuit', 0, 2],
    ['port', 0, 3],
  ]);
  // Of 12 panels 9 stand; ports 1A-01 and 2A-03 have two each, circuit D1-1 three.
  expect(stage?.steps.map(({ panels }) => panels)).toEqual([9, 4, 3, 2]);
  expect(right?.steps.map(({ share }) => share)).toEqual([0.5, 2 / 6, 0, 0]);
});

test('computeProgress has nothing to share out on a stage without panels', () => {
  const bare = { surfaces: { surfaces: [], offsets: [], total: 0 }, zones: [] };
  const [stage, ...rest] = computeProgress(bare.surfaces, bare.zones, {
    column: [],
    port: [],
    circuit: [],
    resting: [],
  });
  expect(rest).toEqual([]);
  expect(stage?.steps.map(({ done, total, share }) => [done, total, share])).toEqual(Array(4).fill([0, 0, null]));
});

test('computeProgress of the surfaces adds up to that of the stage, and nothing is done more often than it is there', () => {
  fc.assert(
    fc.property(ticks, (log) => {
      const [stage, ...areas] = progressOf([...log], twoSurfaces);
      const surfaces = areas.filter(({ kind }) => kind === 'surface');
      expect(surfaces).toHaveLength(2);
      stage!.steps.forEach(({ done, total, panels }, place) => {
        const sum = (figure: 'done' | 'total' | 'panels') =>
          surfaces.reduce((all, area) => all + area.steps[place]![figure], 0);
        expect([sum('done'), sum('total'), sum('panels')]).toEqual([done, total, panels]);
      });
      for (const { steps, panels } of areas) {
        for (const step of steps) {
          expect(step.done).toBeLessThanOrEqual(step.total);
          expect(step.panels).toBeLessThanOrEqual(panels);
        }
      }
    }),
  );
});
