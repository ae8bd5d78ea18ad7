import { describe, expect, it } from 'vitest';
import { itemLink } from '../../src/sheets/item-link';

describe('itemLink', () => {
  it.each([
    ['panel', 'A C38 R9', 'https://plan.example/#of=0b3a&panel=A-C38-R9'],
    ['port', '3B-04', 'https://plan.example/#of=0b3a&port=3B-04'],
    ['circuit', 'D4-11', 'https://plan.example/#of=0b3a&circuit=D4-11'],
  ] as const)('leads to the %s %s', (kind, name, link) => {
    expect(itemLink('https://plan.example/', '0b3a', { kind, name })).toBe(link);
  });
  it('leaves out what the address itself names after its hash', () => {
    expect(itemLink('http://a.example/bench/index.html#plan=k&page=runs', 'x', { kind: 'port', name: '1-01' })).toBe(
      'http://a.example/bench/index.html#of=x&port=1-01',
    );
  });
  it('escapes what would end the name', () => {
    expect(itemLink('http://a.example/', 'x', { kind: 'panel', name: 'A&B#1' })).toBe(
      'http://a.example/#of=x&panel=A%26B%231',
    );
  });
});
