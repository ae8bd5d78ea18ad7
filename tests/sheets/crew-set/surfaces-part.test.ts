import { expect, test } from 'vitest';
import { cautions } from '../../../src/calc/cautions';
import { surfacesPart } from '../../../src/sheets/crew-set/surfaces-part';
import { stageFixture } from '../../arbitraries/evaluation-fixture';
import { options } from './sample-set';

const parts = stageFixture({ columns: 120, rows: 10, jointDeg: 2, zoneColumns: 10, ceilingDiameterMm: 4000 });

test('surfacesPart has the walls from behind or inside, the ceilings from below or above, each under its caution', () => {
  const of = (kind: 'wall' | 'ceiling', from: 'behind' | 'inside') => {
    const part = surfacesPart(parts, kind, from, options)!;
    return [part.id, part.title, part.sheets[0]!.side, part.sheets[0]!.caution];
  };
  expect(of('wall', 'behind')).toEqual(['from-behind', 'Walls from behind', 'drawn from behind', cautions.height]);
  expect(of('wall', 'inside')).toEqual(['from-inside', 'Walls from inside', 'drawn from inside', cautions.height]);
  expect(of('ceiling', 'inside')).toEqual([
    ...['ceiling-below', 'Ceilings from below', 'drawn from below', cautions.hangingLoad],
  ]);
  expect(of('ceiling', 'behind')).toEqual([
    ...['ceiling-above', 'Ceilings from above', 'drawn from above', cautions.hangingLoad],
  ]);
});

test('surfacesPart of a plan without such a surface is none', () => {
  const walls = stageFixture({ columns: 6, rows: 4, jointDeg: 2 });
  expect(surfacesPart(walls, 'ceiling', 'inside', options)).toBeNull();
});

test('surfacesPart draws panels that no zone has so large that they hold their names', () => {
  const sheets = (zones: typeof parts.zones) => surfacesPart({ ...parts, zones }, 'wall', 'behind', options)!.sheets;
  const most = (zones: typeof parts.zones) =>
    Math.max(...sheets(zones).flatMap((sheet) => (sheet.kind === 'drawing' ? sheet.reductions : [])));
  // 2.5 mm of paper a panel of 500 is 1:200; 'C120 R10' needs more than 10 mm: 1:40.
  expect(most(parts.zones)).toBe(200);
  expect(most([])).toBe(40);
  expect(sheets([]).map(({ title }) => title)[0]).toMatch(/^A Wall from behind: C1 to C\d+$/);
});
