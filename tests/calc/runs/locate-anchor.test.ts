import { expect, test } from 'vitest';
import { type AnchorGround, anchorAt, locateAnchor } from '../../../src/calc/runs/locate-anchor';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';
import { anchor, plainRuns } from './plain-runs';

const bands = [{ type: plainType(216), rows: 3 }];
const wall = plainSurface({ letter: 'A', columns: 6, bands, isHole: (column, row) => column === 2 && row === 2 });
const ceiling = plainSurface({ letter: 'B', kind: 'ceiling', columns: 4, bands });
const segment = (id: string, columns: number) => ({ id, columns, jointDeg: 0, mixed: null, jointBeforeDeg: 0 });
const ground: AnchorGround = {
  ...plainRuns({ surfaces: setOf(wall, ceiling) }),
  walls: [{ id: 'a', path: [segment('s1', 2), segment('s2', 4)] }],
};
const found = (...at: Parameters<typeof anchor>) => {
  const located = locateAnchor(anchor(...at), ground);
  if ('reason' in located) return located.reason;
  const table = ground.surfaces.surfaces[located.surface]!;
  return `${table.letter} C${table.column[located.panel]} R${table.row[located.panel]}`;
};

test('locateAnchor counts columns inside their segment', () => {
  expect(found(1, 1, 'a', 's1')).toBe('A C1 R1');
  expect(found(1, 3, 'a', 's2')).toBe('A C3 R3');
});

test('locateAnchor counts a ceiling from its fixed lattice', () => {
  expect(found(-2, -1, 'b', null)).toBe('B C1 R1');
  expect(found(1, 1, 'b', null)).toBe('B C4 R3');
});

test('locateAnchor says why an anchor holds on nothing', () => {
  expect(found(1, 1, 'gone')).toContain('surface');
  expect(found(1, 1, 'a', 'gone')).toContain('segment is not');
  expect(found(3, 1, 'a', 's1')).toContain('no such column');
  expect(found(2, 2, 'a', 's1')).toContain('no panel');
  expect(found(1, 9, 'a', 's1')).toContain('no panel');
  expect(found(-3, 1, 'b', null)).toContain('no panel');
});

test('anchorAt writes down what locateAnchor reads back, for every panel', () => {
  for (const [surface, table] of ground.surfaces.surfaces.entries()) {
    for (let panel = 0; panel < table.count; panel++) {
      expect(locateAnchor(anchorAt(ground, surface, panel)!, ground)).toEqual({ surface, panel });
    }
  }
});

test('anchorAt has no anchor for a panel of an unknown path or lattice', () => {
  expect(anchorAt({ ...ground, walls: [] }, 0, 0)).toBeNull();
  expect(anchorAt({ ...ground, ceilings: { ceilings: [] } }, 1, 0)).toBeNull();
});
