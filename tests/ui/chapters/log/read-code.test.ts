import { expect, test } from 'vitest';
import { itemLink } from '../../../../src/sheets/item-link';
import { readCode } from '../../../../src/ui/chapters/log/read-code';

test.each([
  [itemLink('https://plan.example/', '0b3a', { kind: 'panel', name: 'A C38 R9' }), '#of=0b3a&panel=A-C38-R9'],
  [itemLink('http://10.0.0.7:4173/x/', '0b3a', { kind: 'port', name: '3B-04' }), '#of=0b3a&port=3B-04'],
  ['https://plan.example/#share=AQ-_z', '#share=AQ-_z'],
  ['https://plan.example/#ticks=AQ-_z', '#ticks=AQ-_z'],
])('readCode takes of our link %s only what stands behind its page', (text, hash) => {
  expect(readCode(text)).toEqual({ kind: 'link', hash });
});

test.each(['A C38 R9', ' 3B-04 ', 'D4-11', 'distro 4'])('readCode takes %j for a name', (text) => {
  expect(readCode(text)).toEqual({ kind: 'name', name: text.trim() });
});

test.each([
  'https://elsewhere.example/menu',
  'https://elsewhere.example/#section',
  '',
  'WIFI:T:WPA;S:x;;',
  'x'.repeat(61),
])('readCode says that %j is something else', (text) => {
  expect(readCode(text)).toEqual({ kind: 'other', text });
});
