import { expect, test } from 'vitest';
import { addDelays } from '../../../src/calc/nodes/add-delays';
import { plainMode } from './plain-nodes';

const step = (id: string, frames: number, ms: number, surfaceIds: string[] | null = null) => ({
  id,
  name: id,
  frames,
  ms,
  surfaceIds,
});
const surface = (surfaceId: string, frames: number, pictures = 1) => ({
  surfaceId,
  mode: plainMode(frames, 10, pictures),
});

test('addDelays adds frames at the rate of the camera and milliseconds, step by step', () => {
  // 24 a second: 41.667 ms a frame. 8 + 2 x 41.667 + 41.667 + 1 = 134 ms = 3.216 frames.
  const steps = [step('tracking', 0, 8), step('render', 2, 0), step('processor', 1, 1)];
  const [delay] = addDelays(steps, [surface('a', 24)]);
  expect(delay?.ms).toBeCloseTo(134, 9);
  expect(delay?.frames).toBeCloseTo(3.216, 9);
  expect(delay?.steps.map(({ totalMs }) => totalMs)).toEqual([8, 2000 / 24, 1000 / 24 + 1]);
});

test('addDelays counts frames of the camera where several pictures are fed in each', () => {
  expect(addDelays([step('render', 1, 0)], [surface('a', 50, 2)])[0]?.ms).toBe(20);
});

test('addDelays takes a step for the surfaces that it names, and leaves null where none is left', () => {
  const steps = [step('both', 1, 0, ['a', 'b']), step('wall', 0, 5, ['a'])];
  const delays = addDelays(steps, [surface('a', 50), surface('b', 50), surface('c', 50)]);
  expect(delays.map(({ ms, frames }) => [ms, frames])).toEqual([
    [25, 1.25],
    [20, 1],
    [null, null],
  ]);
  expect(delays[2]?.steps).toEqual([]);
});
