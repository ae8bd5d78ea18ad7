import { expect, test } from 'vitest';
import { checkPicture } from '../../../src/calc/picture/check-picture';
import type { Picture } from '../../../src/plan/picture';
import { mode } from '../ports/plain-items';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';

const surfaces = setOf(plainSurface({ letter: 'A', columns: 2, bands: [{ type: plainType(100), rows: 2 }] }));
const picture = (rest: Partial<Picture>): Picture => ({ base: mode(24), bySurface: [], alsoServe: [], ...rest });
const check = (rest: Partial<Picture>, id: string) =>
  checkPicture({ picture: picture(rest), surfaces }).find((found) => found.id === id);

test('checkPicture passes an ordinary picture with one check', () => {
  const checks = checkPicture({ picture: picture({}), surfaces });
  expect(checks.map(({ id, severity }) => [id, severity])).toEqual([['picture.rate-range', 'pass']]);
  expect(checks[0]).toMatchObject({ measured: 24, limit: 240 });
});

test('checkPicture names a rate for a surface that is not there, and drops it', () => {
  const own = { surfaceId: 'a', mode: mode(25) };
  const found = check({ bySurface: [own, { surfaceId: 'gone', mode: mode(50) }] }, 'picture.surface-names');
  expect(found).toMatchObject({ severity: 'watch', measured: 1, limit: 0 });
  expect(found?.where.map(({ name }) => name)).toEqual(['picture.bySurface[1].surfaceId']);
  expect(found?.fix?.command.args).toMatchObject({ fields: [{ path: ['picture', 'bySurface'], value: [own] }] });
  expect(check({ bySurface: [own] }, 'picture.surface-names')).toBeUndefined();
});

test('checkPicture names what must be served on no surface and keeps what still means something', () => {
  const alsoServe = [
    { id: 's1', mode: mode(48), surfaceIds: ['gone', 'a'] },
    { id: 's2', mode: mode(50), surfaceIds: ['gone'] },
    { id: 's3', mode: mode(60), surfaceIds: null },
  ];
  const found = check({ alsoServe }, 'picture.served-names');
  expect(found).toMatchObject({ severity: 'watch', measured: 2, limit: 0 });
  expect(found?.where.map(({ name }) => name)).toEqual([
    'picture.alsoServe[0].surfaceIds',
    'picture.alsoServe[1].surfaceIds',
  ]);
  expect(found?.fix?.command.args).toMatchObject({
    fields: [{ value: [{ id: 's1', mode: mode(48), surfaceIds: ['a'] }, alsoServe[2]] }],
  });
});

test('checkPicture lets a rate be served where its surfaces are all there', () => {
  const alsoServe = [{ id: 's1', mode: mode(48), surfaceIds: ['a'] }];
  expect(check({ alsoServe }, 'picture.served-names')).toBeUndefined();
});

test('checkPicture watches a rate below 23.976 or above 240, and says which', () => {
  const slow = check({ base: mode(12) }, 'picture.rate-range');
  expect(slow).toMatchObject({ severity: 'watch', measured: 12, limit: 24_000 / 1001 });
  expect(slow?.sentence).toContain('or more');
  const fast = check({ alsoServe: [{ id: 's', mode: mode(1000), surfaceIds: null }] }, 'picture.rate-range');
  expect(fast).toMatchObject({ severity: 'watch', measured: 1000, limit: 240 });
  expect(fast?.sentence).toContain('up to');
  expect(fast?.where).toEqual([{ kind: 'field', name: 'picture.alsoServe[0].mode.rate' }]);
  expect(check({ base: mode(24_000, 8, 1, 1001) }, 'picture.rate-range')?.severity).toBe('pass');
});

// ITU-R BT.709-6 has 24/1.001 and 30/1.001 exactly, not 23.976 and 29.97.
test('checkPicture offers the exact fraction for a rounded x1000/1001 rate', () => {
  const bySurface = [{ surfaceId: 'a', mode: mode(23_976, 8, 1, 1000) }];
  const found = check({ base: mode(2997, 8, 1, 100), bySurface }, 'picture.rate-exact');
  expect(found?.severity).toBe('watch');
  expect(found?.fix?.command.args).toMatchObject({
    fields: [
      { path: ['picture', 'base', 'rate'], value: { frames: 30_000, seconds: 1001 } },
      { path: ['picture', 'bySurface', 0, 'mode', 'rate'], value: { frames: 24_000, seconds: 1001 } },
    ],
  });
});

test.each([[24], [25], [48], [90], [59]])('checkPicture takes %i frames a second as they are', (frames) => {
  expect(check({ base: mode(frames) }, 'picture.rate-exact')).toBeUndefined();
});
