import { describe, expect, it } from 'vitest';
import { addressCaution, readPageAddress } from '../../../src/ui/storage/page-address';

describe('readPageAddress', () => {
  it.each([
    ['https://plan.example', 'https://plan.example/'],
    [' http://192.0.2.7:4173/bench/#plan=k ', 'http://192.0.2.7:4173/bench/'],
  ])('takes %j as %j', (text, address) => {
    expect(readPageAddress(text)).toBe(address);
  });
  it.each(['', 'plan.example', 'ftp://plan.example/', 'javascript:alert(1)', 'https://'])('refuses %j', (text) => {
    expect(readPageAddress(text)).toBeNull();
  });
});

describe('addressCaution', () => {
  it.each(['http://localhost:4173/', 'http://127.0.0.1:4173/', 'http://[::1]/', 'file:///plan/index.html'])(
    'says that nobody else gets here by %s',
    (address) => expect(addressCaution(address)).toContain('their own machine'),
  );
  it('says that nothing is kept offline over http, and nothing of https', () => {
    expect(addressCaution('http://192.0.2.7/')).toContain('offline');
    expect(addressCaution('https://localhost.example/')).toBeNull();
  });
});
