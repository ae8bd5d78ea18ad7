import { expect, test } from 'vitest';
import { spreadLevels } from '../../src/sheets/spread-levels';

test('spreadLevels leaves levels that are far enough apart where they are', () => {
  expect(spreadLevels([0, 300, 900], 300)).toEqual([0, 300, 900]);
});

test('spreadLevels lifts a level off the one below it, and those above with it', () => {
  expect(spreadLevels([1000, 1100, 1200, 5000], 300)).toEqual([1000, 1300, 1600, 5000]);
  expect(spreadLevels([], 300)).toEqual([]);
});
