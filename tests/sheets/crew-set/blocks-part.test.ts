import { expect, test } from 'vitest';
import { blocksPart } from '../../../src/sheets/crew-set/blocks-part';

test('blocksPart is one sheet under the title of the part, with its caution', () => {
  const blocks = [{ kind: 'contents' }] as const;
  expect(blocksPart('bill', 'Bill', 'Take care.', blocks)).toEqual({
    id: 'bill',
    title: 'Bill',
    sheets: [{ kind: 'blocks', title: 'Bill', side: null, caution: 'Take care.', blocks }],
  });
});
