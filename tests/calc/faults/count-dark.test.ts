import { expect, it } from 'vitest';
import { countDark } from '../../../src/calc/faults/count-dark';
import { stageFixture } from '../../arbitraries/evaluation-fixture';

it('countDark counts each surface against its own panels, and all against the stage', () => {
  // A wall of 4 x 3, and a ceiling of which one panel is dark.
  const { surfaces } = stageFixture({ columns: 4, rows: 3, jointDeg: 0, ceilingDiameterMm: 2000 });
  const ceiling = surfaces.surfaces[1]!;
  expect(countDark(surfaces, [0, 5, 11, 12])).toEqual({
    panels: 4,
    share: 4 / (12 + ceiling.count),
    surfaces: [
      { surfaceId: surfaces.surfaces[0]!.surfaceId, letter: 'A', panels: 3, share: 3 / 12 },
      { surfaceId: ceiling.surfaceId, letter: ceiling.letter, panels: 1, share: 1 / ceiling.count },
    ],
  });
});

it('countDark of nothing is nothing, on an empty stage too', () => {
  expect(countDark({ surfaces: [], offsets: [], total: 0 }, [])).toEqual({ panels: 0, share: 0, surfaces: [] });
});
