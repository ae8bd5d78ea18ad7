import { expect, it } from 'vitest';
import { describeStage } from '../../src/sheets/describe-stage';
import { stageFixture } from '../arbitraries/evaluation-fixture';

const format = (mm: number) => `${Math.round(mm)} mm`;

it('describeStage says what stands there and what hangs over it', () => {
  const parts = stageFixture({ columns: 136, rows: 13, jointDeg: 2.5, ceilingDiameterMm: 1000 });
  expect(describeStage(parts, format)).toBe(
    'A Wall: 136 columns of 13 rows, 6500 mm high, 22915 mm across inside, open by 3980 mm. B Ceiling: 4 panels overhead, trim 6200 mm.',
  );
});

it('describeStage leaves out what a flat wall has not, and says when there is nothing', () => {
  expect(describeStage(stageFixture({ columns: 2, rows: 1, jointDeg: 0 }), format)).toBe(
    'A Wall: 2 columns of 1 row, 500 mm high.',
  );
  expect(describeStage({ walls: [], ceilings: [] }, format)).toMatch(/Nothing/);
});
