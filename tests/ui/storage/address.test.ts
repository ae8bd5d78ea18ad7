import { expect, test } from 'vitest';
import { readAddress, writeAddress } from '../../../src/ui/storage/address';

test('readAddress of writeAddress is the identity', () => {
  expect(readAddress(writeAddress('a-1', 'power'))).toEqual({ key: 'a-1', page: 'power', panel: null });
  expect(readAddress(writeAddress('a-1', 'runs', 'A C38 R9'))).toEqual({ key: 'a-1', page: 'runs', panel: 'A C38 R9' });
});

test('writeAddress writes a panel without escapes, and readAddress takes one alone', () => {
  expect(writeAddress('a-1', 'runs', 'A C38 R9')).toBe('#plan=a-1&page=runs&panel=A-C38-R9');
  expect(readAddress('#panel=C3-R2')).toEqual({ key: null, page: null, panel: 'C3 R2' });
});

test.each(['', '#', '#plan=', '#page=nowhere', '#%%%', '#plan', '#panel=', '#panel=-'])(
  'readAddress of %j names nothing',
  (hash) => {
    expect(readAddress(hash)).toEqual({ key: null, page: null, panel: null });
  },
);
