import { inflateSync } from 'node:zlib';

/**
 * The text of each page of a PDF as the browser prints it, in the order in which it is drawn; a new line where the next
 * letter stands at another height. It reads what Chromium writes (PDF 1.4, a plain table of objects, letters as
 * hexadecimal codes of fonts with a ToUnicode map: ISO 32000-1, 7.5.4 and 9.10.3) and throws on anything else.
 */
export function readPdfText(bytes: Buffer): readonly string[] {
  const objects = readObjects(bytes);
  const pages = [...objects.values()].filter(({ head }) => /\/Type \/Page\b/.test(head));
  if (pages.length === 0) throw new Error('no page was found in the PDF');
  return pages.map(({ head }) => {
    const letters = new Map<string, ReadonlyMap<number, string>>();
    const fonts = /\/Font <<([^>]*)>>/.exec(head)?.[1] ?? '';
    for (const [, name, id] of fonts.matchAll(/\/(\w+) (\d+) 0 R/g)) {
      const map = referred(objects, objects.get(Number(id))?.head ?? '', 'ToUnicode');
      if (map !== null) letters.set(name!, readLetters(map));
    }
    const content = referred(objects, head, 'Contents');
    if (content === null) throw new Error('a page of the PDF has no content');
    return readContent(content, letters);
  });
}

interface PdfObject {
  readonly head: string;
  readonly stream: Buffer | null;
}

/** Every object of the file, found by its table. */
function readObjects(bytes: Buffer): ReadonlyMap<number, PdfObject> {
  const text = bytes.toString('latin1');
  const table = Number(/startxref\s+(\d+)\s+%%EOF\s*$/.exec(text)?.[1]);
  const found = /^xref\s+0 (\d+)\s+/.exec(text.slice(table));
  if (!found) throw new Error('the PDF has no plain table of objects');
  const objects = new Map<number, PdfObject>();
  for (let id = 1; id < Number(found[1]); id++) {
    const start = Number(text.substr(table + found[0].length + 20 * id, 10));
    const end = text.indexOf('endobj', start);
    const dictionary = text.slice(start, end);
    const streamAt = dictionary.search(/stream\r?\n/);
    if (streamAt < 0) {
      objects.set(id, { head: dictionary, stream: null });
      continue;
    }
    const head = dictionary.slice(0, streamAt);
    const from = text.indexOf('\n', start + streamAt) + 1;
    const length = Number(/\/Length (\d+)/.exec(head)?.[1]);
    const raw = bytes.subarray(from, from + length);
    objects.set(id, { head, stream: head.includes('/FlateDecode') ? inflateSync(raw) : raw });
  }
  return objects;
}

function referred(objects: ReadonlyMap<number, PdfObject>, head: string, key: string): string | null {
  const id = new RegExp(`/${key} (\\d+) 0 R`).exec(head)?.[1];
  return objects.get(Number(id))?.stream?.toString('latin1') ?? null;
}

function fromUtf16(hex: string): string {
  return Buffer.from(hex, 'hex').swap16().toString('utf16le');
}

/** What each code of a font stands for. */
function readLetters(map: string): ReadonlyMap<number, string> {
  const letters = new Map<number, string>();
  for (const [, lines] of map.matchAll(/beginbfchar([\s\S]*?)endbfchar/g)) {
    for (const [, code, text] of lines!.matchAll(/<(\w+)> <(\w+)>/g))
      letters.set(parseInt(code!, 16), fromUtf16(text!));
  }
  for (const [, lines] of map.matchAll(/beginbfrange([\s\S]*?)endbfrange/g)) {
    for (const [, first, last, text] of lines!.matchAll(/<(\w+)> <(\w+)> <(\w+)>/g)) {
      const from = parseInt(first!, 16);
      for (let code = from; code <= parseInt(last!, 16); code++) {
        letters.set(code, String.fromCodePoint(fromUtf16(text!).codePointAt(0)! + code - from));
      }
    }
  }
  return letters;
}

function readContent(content: string, letters: ReadonlyMap<string, ReadonlyMap<number, string>>): string {
  let text = '';
  let font: ReadonlyMap<number, string> | undefined;
  let height = 0;
  let lastHeight: number | null = null;
  const operators = /\/(\w+) [-.\d]+ Tf|(?:[-.\d]+ ){5}([-.\d]+) Tm|[-.\d]+ ([-.\d]+) Td|<(\w+)> Tj|[)\]] T[jJ]/g;
  for (const [operator, fontName, matrixHeight, step, codes] of content.matchAll(operators)) {
    if (fontName !== undefined) font = letters.get(fontName);
    else if (matrixHeight !== undefined) height = Number(matrixHeight);
    else if (step !== undefined) height += Number(step);
    else if (codes === undefined) throw new Error(`the PDF draws text by ${operator}, which is not read`);
    else {
      if (lastHeight !== null && Math.abs(height - lastHeight) > 1) text += '\n';
      lastHeight = height;
      for (let at = 0; at < codes.length; at += 4) text += font?.get(parseInt(codes.slice(at, at + 4), 16)) ?? '';
    }
  }
  return text;
}
