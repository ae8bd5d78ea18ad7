import type { PageFace } from './page';
import { printableText } from './printable-text';
import { textWidthMm } from './text-width';

/**
 * A text in printable lines that are no wider than this: broken at blanks, and inside a word only where the word alone is
 * wider. A line break in the text stays one. At least one line; a line holds at least one sign, however narrow the room.
 */
export function breakLines(text: string, face: PageFace, sizeMm: number, widthMm: number): readonly string[] {
  const width = (line: string) => textWidthMm(line, face, sizeMm);
  const lines: string[] = [];
  for (const paragraph of text.split('\n')) {
    let line = '';
    for (const word of printableText(paragraph, face).split(' ')) {
      if (word === '') continue;
      const longer = line === '' ? word : `${line} ${word}`;
      if (width(longer) <= widthMm) {
        line = longer;
        continue;
      }
      if (line !== '') lines.push(line);
      line = '';
      for (const sign of word) {
        if (line !== '' && width(line + sign) > widthMm) {
          lines.push(line);
          line = '';
        }
        line += sign;
      }
    }
    lines.push(line);
  }
  return lines;
}
