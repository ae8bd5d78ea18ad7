import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sha256 } from '../../src/files/sha-256';

const bytesOf = (text: string) => new TextEncoder().encode(text);

describe('sha256', () => {
  it('gives the published digest of "abc"', () => {
    // NIST, examples of FIPS 180-4: SHA-256, one block message.
    expect(sha256(bytesOf('abc'))).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  });
  it('gives the published digest of two blocks', () => {
    // NIST, examples of FIPS 180-4: SHA-256, two block message.
    expect(sha256(bytesOf('abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq'))).toBe(
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    );
  });
  it('agrees with Node on any bytes, round every block length', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        expect(sha256(bytes)).toBe(createHash('sha256').update(bytes).digest('hex'));
      }),
    );
  });
});
