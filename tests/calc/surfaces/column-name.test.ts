import { expect, test } from 'vitest';
import { columnName } from '../../../src/calc/surfaces/column-name';
import { stageFixture } from '../../arbitraries/evaluation-fixture';

test('columnName drops the letter where the stage has one surface, as names of panels do', () => {
  const { surfaces } = stageFixture({ columns: 4, rows: 3, jointDeg: 5 });
  expect(columnName(surfaces, surfaces.surfaces[0]!, 4)).toBe('C4');
});

test('columnName begins with the letter where there are several surfaces', () => {
  const { surfaces } = stageFixture({ columns: 4, rows: 3, jointDeg: 5, ceilingDiameterMm: 1500 });
  expect(surfaces.surfaces.map((surface) => columnName(surfaces, surface, 1))).toEqual(['A C1', 'B C1']);
});
