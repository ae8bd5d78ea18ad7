import { describe, expect, it } from 'vitest';
import { setFieldsIn } from '../../src/calc/set-fields-in';

const root = {
  walls: [
    { base: 1, path: [{ joint: 2 }] },
    { base: 3, path: [] },
  ],
  other: { kept: true },
};

describe('setFieldsIn', () => {
  it('sets fields in records and lists, one after the other', () => {
    const next = setFieldsIn(root, [
      { path: ['walls', 0, 'path', 0, 'joint'], value: 5 },
      { path: ['walls', 0, 'base'], value: 9 },
    ]);
    expect(next).toEqual({
      walls: [
        { base: 9, path: [{ joint: 5 }] },
        { base: 3, path: [] },
      ],
      other: { kept: true },
    });
  });

  it('leaves the root as it was and shares what did not change', () => {
    const next = setFieldsIn(root, [{ path: ['walls', 0, 'base'], value: 9 }]);
    expect(root.walls[0]!.base).toBe(1);
    expect(next.walls[1]).toBe(root.walls[1]);
    expect(next.other).toBe(root.other);
    expect(Array.isArray(next.walls)).toBe(true);
  });
});
