import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromBase64Url, toBase64Url } from '../../src/files/base64url';

const bytesOf = (text: string) => new TextEncoder().encode(text);

describe('toBase64Url', () => {
  // RFC 4648, section 10, without the padding.
  it.each([
    ['', ''],
    ['f', 'Zg'],
    ['fo', 'Zm8'],
    ['foo', 'Zm9v'],
    ['foob', 'Zm9vYg'],
    ['fooba', 'Zm9vYmE'],
    ['foobar', 'Zm9vYmFy'],
  ])('writes the published example %j as %j', (text, signs) => {
    expect(toBase64Url(bytesOf(text))).toBe(signs);
    expect(fromBase64Url(signs)).toEqual({ bytes: bytesOf(text), isWhole: true });
  });
  it('agrees with Node on any bytes, and is read back', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 100 }), (bytes) => {
        const signs = toBase64Url(bytes);
        expect(signs).toBe(Buffer.from(bytes).toString('base64url'));
        expect(fromBase64Url(signs)).toEqual({ bytes, isWhole: true });
      }),
    );
  });
});

describe('fromBase64Url', () => {
  it.each(['Zg==', 'Zm+v', 'Zm/v', 'Z m9', 'Zm9v.', 'Zmö'])('knows no sign of another alphabet: %j', (signs) => {
    expect(fromBase64Url(signs)).toBeNull();
  });
  it.each(['A', 'Zm9vA', 'Z', 'Zm9vY', 'Zh', 'Zm9'])('says that %j ends where no byte ends', (signs) => {
    expect(fromBase64Url(signs)).toMatchObject({ isWhole: false });
  });
});
