const blank = /[ \t\n\r]*/y;
const scalar = /(?:-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)(?![\w.+-])/y;
const escapeSequence = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;

/**
 * Offset of the first character that JSON (RFC 8259) does not allow there; the text's length where it ends too soon;
 * undefined where nothing is wrong. Without recursion. For a text that did not parse: engines say the place each in its own
 * way, or not at all.
 */
export function locateJsonFault(text: string): number | undefined {
  const open: ('}' | ']')[] = [];
  let at = skip(blank, text, 0);
  let wants: 'value' | 'value or end' | 'key' | 'key or end' | 'mark' = 'value';
  while (wants !== 'mark' || open.length > 0) {
    const character = text[at];
    const closes = character !== undefined && character === open.at(-1);
    if (closes && (wants === 'mark' || wants.endsWith('or end'))) {
      open.pop();
      at += 1;
      wants = 'mark';
    } else if (wants === 'mark') {
      if (character !== ',') return at;
      at += 1;
      wants = open.at(-1) === '}' ? 'key' : 'value';
    } else if (wants.startsWith('key')) {
      const end = endOfString(text, at);
      if (end < 0) return ~end;
      at = skip(blank, text, end);
      if (text[at] !== ':') return at;
      at += 1;
      wants = 'value';
    } else if (character === '{' || character === '[') {
      open.push(character === '{' ? '}' : ']');
      at += 1;
      wants = character === '{' ? 'key or end' : 'value or end';
    } else if (character === '"') {
      const end = endOfString(text, at);
      if (end < 0) return ~end;
      at = end;
      wants = 'mark';
    } else {
      const end = skip(scalar, text, at);
      if (end === at) return at;
      at = end;
      wants = 'mark';
    }
    at = skip(blank, text, at);
  }
  return at < text.length ? at : undefined;
}

function skip(pattern: RegExp, text: string, at: number): number {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : at;
}

/** Offset behind the string that begins at `at`; where none begins or it is broken, the complement (~) of the fault's offset. */
function endOfString(text: string, at: number): number {
  if (text[at] !== '"') return ~at;
  for (let i = at + 1; i < text.length; ) {
    const code = text.charCodeAt(i);
    if (code === 34) return i + 1;
    if (code < 32) return ~i;
    if (code !== 92) {
      i += 1;
      continue;
    }
    const end = skip(escapeSequence, text, i);
    if (end === i) return ~i;
    i = end;
  }
  return ~text.length;
}
