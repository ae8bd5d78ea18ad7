import { expect, test } from 'vitest';
import { sourceText } from '../../../src/ui/bench/source-text';

test.each([
  [{ kind: 'source', text: 'IEEE 802.3, clause 3' }, 'Source: IEEE 802.3, clause 3'],
  [{ kind: 'practice', text: '' }, 'Common practice, no source'],
  [{ kind: 'sheet', text: 'Weir' }, 'From an equipment data sheet: Weir'],
  [{ kind: 'given', text: '' }, 'Given by you'],
  [{ kind: 'source', text: 'IEC 60364-5-53', fromMemory: true }, 'Source: IEC 60364-5-53 (from memory)'],
] as const)('sourceText of %j', (source, text) => {
  expect(sourceText(source)).toBe(text);
});
