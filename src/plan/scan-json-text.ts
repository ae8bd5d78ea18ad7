/** What the brackets and quotes of a text say, before anything is read from it. */
export interface JsonTextScan {
  /** Most records and lists one inside the other. */
  readonly deepest: number;
  /** True where the text ends inside a string, a record or a list. */
  readonly endsInside: boolean;
}

/** Looks through a text once, without recursion, at any length. */
export function scanJsonText(text: string): JsonTextScan {
  let depth = 0;
  let deepest = 0;
  let inString = false;
  for (let i = 0; i < text.length; i += 1) {
    const code = text.charCodeAt(i);
    if (inString) {
      if (code === 92) i += 1;
      else if (code === 34) inString = false;
    } else if (code === 34) {
      inString = true;
    } else if (code === 123 || code === 91) {
      depth += 1;
      if (depth > deepest) deepest = depth;
    } else if (code === 125 || code === 93) {
      depth -= 1;
    }
  }
  return { deepest, endsInside: inString || depth > 0 };
}
