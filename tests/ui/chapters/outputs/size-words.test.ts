import { expect, test } from 'vitest';
import { sizeWords } from '../../../../src/ui/chapters/outputs/size-words';

const format = (value: number | null) => String(value);

test('sizeWords has kilobytes, from a million bytes on megabytes, and marks an estimate', () => {
  expect(sizeWords({ of: 'map', bytes: 999_001, isExact: true }, format)).toBe('1000 kB');
  expect(sizeWords({ of: 'gltf', bytes: 342_844, isExact: true }, format)).toBe('343 kB');
  expect(sizeWords({ of: 'set', bytes: 7_080_000, isExact: false }, format)).toBe('about 7.1 MB');
  expect(sizeWords(undefined, format)).toBe('');
});
