import { expect, test } from 'vitest';
import { escapeXml } from '../../src/files/escape-xml';

test('escapeXml escapes what would begin markup or end an attribute, and nothing else', () => {
  // The five entities that XML 1.0 (fifth edition), section 4.6, predefines.
  expect(escapeXml(`a & b < c > "d" 'e'`)).toBe('a &amp; b &lt; c &gt; &quot;d&quot; &apos;e&apos;');
  expect(escapeXml('Größe Ø 中 🙂')).toBe('Größe Ø 中 🙂');
});

test('escapeXml leaves no sign that XML may not hold', () => {
  // XML 1.0, production 2: no control signs but tab and line breaks, no lone surrogates, no U+FFFE.
  expect(escapeXml('a\u0000b\u001bc\ud800d\ufffee\tf\ng')).toBe('a b c d e\tf\ng');
});
