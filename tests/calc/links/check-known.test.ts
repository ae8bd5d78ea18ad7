import { expect, test } from 'vitest';
import { checkKnown } from '../../../src/calc/links/check-known';
import { ownLink } from './plain-links';

test('checkKnown finds links that are not in the table and chooses none instead', () => {
  const [found, ...others] = checkKnown({
    linkId: 'not-there',
    bySurface: [ownLink('a', 'displayport-hbr2'), ownLink('b', 'nor-this'), ownLink('c', null)],
  });
  expect(found).toMatchObject({ id: 'links.known', severity: 'watch', measured: 2, limit: 0 });
  expect(found?.where.map(({ name }) => name)).toEqual(['feed.linkId', 'feed.bySurface[1].linkId']);
  expect(found?.fix?.command.args).toMatchObject({
    fields: [
      { path: ['feed', 'linkId'], value: null },
      { path: ['feed', 'bySurface', 1, 'linkId'], value: null },
    ],
  });
  expect(others).toEqual([]);
});

test('checkKnown has nothing to say where every link stated is in the table', () => {
  expect(checkKnown({ linkId: null, bySurface: [ownLink('a', 'sdi-12g-single')] })).toEqual([]);
});
