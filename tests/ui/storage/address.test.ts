import { expect, test } from 'vitest';
import { readAddress, writeAddress } from '../../../src/ui/storage/address';

test('readAddress of writeAddress is the identity', () => {
  expect(readAddress(writeAddress('a-1', 'power'))).toEqual({ key: 'a-1', page: 'power' });
});

test.each(['', '#', '#plan=', '#page=nowhere', '#%%%', '#plan'])('readAddress of %j names nothing', (hash) => {
  expect(readAddress(hash)).toEqual({ key: null, page: null });
});
