import { expect, test } from 'vitest';
import { thingNamed } from '../../../src/calc/log/thing-named';
import { smallStage, twoSurfaces } from './small-stage';

test.each([
  ['C38', 'C38'],
  ['A C38', 'C38'],
  ['B C38', 'B C38'],
])('thingNamed on a stage of one surface A takes column %s for %s', (name, now) => {
  expect(thingNamed(smallStage.surfaces, { of: 'column', name })).toBe(now);
});

test.each([
  ['C38', 'A C38'],
  ['A C38', 'A C38'],
  ['B C2', 'B C2'],
  ['Z C2', 'Z C2'],
])('thingNamed on a stage of surfaces A and B takes column %s for %s', (name, now) => {
  expect(thingNamed(twoSurfaces.surfaces, { of: 'column', name })).toBe(now);
});

test('thingNamed leaves ports, circuits and what is no name of a column alone', () => {
  expect(thingNamed(twoSurfaces.surfaces, { of: 'port', name: '3B-04' })).toBe('3B-04');
  expect(thingNamed(twoSurfaces.surfaces, { of: 'circuit', name: 'C1' })).toBe('C1');
  expect(thingNamed(twoSurfaces.surfaces, { of: 'column', name: 'the left one' })).toBe('the left one');
});
