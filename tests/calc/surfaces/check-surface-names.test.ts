import { expect, test } from 'vitest';
import { checkSurfaceNames, type NamingList } from '../../../src/calc/surfaces/check-surface-names';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';

const surfaces = setOf(plainSurface({ letter: 'A', columns: 1, bands: [{ type: plainType(100), rows: 1 }] }));
const list = (entries: readonly string[]): NamingList<string> => ({
  id: 'ports.some-names',
  chapter: 'ports',
  path: ['signal', 'list'],
  field: 'surfaceId',
  entries,
  keep: (entry, isThere) => (isThere(entry) ? entry : null),
  sentence: 'Idle: {measured}.',
  called: 'some list',
});

test('checkSurfaceNames says nothing where every entry has its surface', () => {
  expect(checkSurfaceNames(surfaces, list(['a', 'a']))).toEqual([]);
  expect(checkSurfaceNames(surfaces, list([]))).toEqual([]);
});

test('checkSurfaceNames points at the field of each idle entry and keeps the others in their order', () => {
  const [found] = checkSurfaceNames(surfaces, list(['gone', 'a', 'lost']));
  expect(found).toMatchObject({ severity: 'watch', measured: 2, limit: 0, unit: 'count' });
  expect(found?.where.map(({ name }) => name)).toEqual(['signal.list[0].surfaceId', 'signal.list[2].surfaceId']);
  expect(found?.fix?.command.args).toEqual({
    fields: [{ path: ['signal', 'list'], value: ['a'] }],
    label: 'some list',
  });
});

test('checkSurfaceNames names fifty places at most, and counts all', () => {
  const [found] = checkSurfaceNames(surfaces, list(Array.from({ length: 60 }, (_, i) => `gone-${i}`)));
  expect(found?.measured).toBe(60);
  expect(found?.where).toHaveLength(50);
});
