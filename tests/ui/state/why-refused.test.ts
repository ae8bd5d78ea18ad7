import { describe, expect, it } from 'vitest';
import { commands } from '../../../src/plan/commands';
import { copyKey, isCopyKey } from '../../../src/ui/state/copy-key';
import { whyRefused } from '../../../src/ui/state/why-refused';

const own = { documentKey: 'a-1', follows: false };
const copy = { documentKey: copyKey('0123456789abcdef0123456789abcdef0123'), follows: false };

describe('whyRefused', () => {
  it('lets an own plan take every command, and a tab that follows none', () => {
    for (const name of Object.keys(commands)) {
      expect(whyRefused(own, name)).toBeNull();
      expect(whyRefused({ ...own, follows: true }, name)).toContain('another tab');
    }
  });
  it('lets a copy take ticks and nothing else', () => {
    const taken = Object.keys(commands).filter((name) => whyRefused(copy, name) === null);
    expect(taken).toEqual(['put-ticks']);
    expect(whyRefused({ ...copy, follows: true }, 'put-ticks')).toContain('another tab');
  });
});

describe('isCopyKey', () => {
  it('tells copies from own documents', () => {
    expect(copy.documentKey).toBe('shared-0123456789abcdef0123456789abcdef');
    expect([copy.documentKey, own.documentKey, crypto.randomUUID()].map(isCopyKey)).toEqual([true, false, false]);
  });
});
