import { expect, it } from 'vitest';
import { rimSegments } from '../../../../src/ui/drawings/stage/rim-segments';
import { stageFixture } from '../../../arbitraries/evaluation-fixture';

const lengthOf = (segments: Float32Array) => {
  let length = 0;
  for (let i = 0; i < segments.length; i += 6) {
    length += Math.hypot(
      segments[i + 3]! - segments[i]!,
      segments[i + 4]! - segments[i + 1]!,
      segments[i + 5]! - segments[i + 2]!,
    );
  }
  return length;
};

it('rimSegments goes round the face and the back of a wall, and round its holes', () => {
  const whole = stageFixture({ columns: 6, rows: 4, jointDeg: 5 }).surfaces.surfaces[0]!;
  // 3 m by 2 m, twice.
  expect(lengthOf(rimSegments(whole))).toBeCloseTo(2 * 10, 4);
  const hole = { column: 3, row: 2, columns: 1, rows: 1 };
  const holed = stageFixture({ columns: 6, rows: 4, jointDeg: 5, hole }).surfaces.surfaces[0]!;
  expect(lengthOf(rimSegments(holed))).toBeCloseTo(2 * 10 + 2 * 2, 4);
});

it('rimSegments keeps to the heights of the wall', () => {
  const raised = stageFixture({ columns: 2, rows: 2, jointDeg: 0, baseMm: 600 }).surfaces.surfaces[0]!;
  const heights = [...rimSegments(raised)].filter((_, i) => i % 3 === 1);
  expect(Math.min(...heights)).toBeCloseTo(0.6, 6);
  expect(Math.max(...heights)).toBeCloseTo(1.6, 6);
});

it('rimSegments lies flat round a ceiling, on its face and on its back', () => {
  const ceiling = stageFixture({ columns: 1, rows: 1, jointDeg: 0, ceilingDiameterMm: 1000 }).surfaces.surfaces[1]!;
  const segments = rimSegments(ceiling);
  expect(lengthOf(segments)).toBeCloseTo(2 * 4, 4);
  expect(new Set([...segments].filter((_, i) => i % 3 === 1).map((height) => height.toFixed(3)))).toEqual(
    new Set(['6.200', '6.290']),
  );
});
