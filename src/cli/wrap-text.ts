/** Lines of at most `width` characters, broken between words (a space that does not break holds); a longer word keeps its line. Later lines are indented. */
export function wrapText(text: string, width: number, indent = ''): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/[ \t\n]+/).filter((each) => each !== '')) {
    const longer = line === '' ? `${lines.length === 0 ? '' : indent}${word}` : `${line} ${word}`;
    if (line !== '' && longer.length > width) {
      lines.push(line);
      line = `${indent}${word}`;
    } else {
      line = longer;
    }
  }
  return line === '' ? lines : [...lines, line];
}
