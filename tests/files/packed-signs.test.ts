import { inflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fromBase64Url } from '../../src/files/base64url';
import { packSigns, unpackSigns } from '../../src/files/packed-signs';

const dictionary = new TextEncoder().encode('{"step":"wired","of":"port","name":"');
const form = { form: 3, dictionary };

test('packSigns gives signs that need no escape in an address, and unpackSigns the text again', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), (text) => {
      const signs = packSigns(text, form);
      expect(signs).toMatch(/^[A-Za-z0-9_-]+$/);
      expect(unpackSigns(signs, form)).toEqual({ text });
    }),
  );
});

test('packSigns packs so that another unpacker reads it: RFC 1951 against the dictionary behind nine bytes', () => {
  const text = '{"step":"wired","of":"port","name":"3B-04"}';
  const { bytes } = fromBase64Url(packSigns(text, form))!;
  expect(bytes[0]).toBe(3);
  expect(inflateRawSync(bytes.subarray(9, -4), { dictionary }).toString()).toBe(text);
});

test('unpackSigns names signs of a later form, of an earlier one, and those that were cut at any place', () => {
  const signs = packSigns('a text', form);
  expect(unpackSigns(signs, { ...form, form: 2 })).toMatchObject({ refused: 'newer-form' });
  expect(unpackSigns(signs, { ...form, form: 4 })).toMatchObject({ refused: 'damaged' });
  for (let end = 0; end < signs.length; end++) {
    expect(unpackSigns(signs.slice(0, end), form)).toMatchObject({ refused: 'cut' });
  }
});

test('unpackSigns reads nothing against another dictionary than that of the form', () => {
  const signs = packSigns('{"step":"wired","of":"port","name":"3B-04"}', form);
  expect(unpackSigns(signs, { form: 3, dictionary: dictionary.toReversed() })).not.toHaveProperty(
    'text',
    expect.stringContaining('wired'),
  );
});
