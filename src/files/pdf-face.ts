import { create, type Font } from '@cantoo/fontkit';
import { type PDFContext, type PDFDocument, type PDFFont, PDFName, type PDFRef } from '@cantoo/pdf-lib';

/** A face in a PDF file: only the signs that were asked for are embedded. */
export interface PdfFace {
  readonly name: string;
  readonly ref: PDFRef;
  /** Signs as the string operand that shows them. */
  readonly encode: (text: string) => string;
  /** Names of the forms that paint the rim round each sign, one em to 1000 units; null for a sign without outline. */
  readonly rims: (text: string) => readonly (string | null)[];
  /** Every rim that was asked for, by its name. */
  readonly rimForms: () => ReadonlyMap<string, PDFRef>;
}

/** Width of the rim on both sides together, in thousandths of the em. */
const rimWidth = 250;

/** `name` is what pages call it; `bytes` is a TrueType file. */
export async function embedPdfFace(document: PDFDocument, name: string, bytes: Uint8Array): Promise<PdfFace> {
  const font: PDFFont = await document.embedFont(bytes, { subset: true, features: { liga: false, kern: false } });
  const outlines = create(bytes) as Font;
  const codes = new Map<string, string>();
  const forms = new Map<string, string | null>();
  const refs = new Map<string, PDFRef>();

  // A sign at a time, so that no two of them are joined and each keeps its advance width.
  function codeOf(sign: string): string {
    const known = codes.get(sign);
    if (known !== undefined) return known;
    const code = font.encodeText(sign).asString();
    codes.set(sign, code);
    return code;
  }

  function rimOf(sign: string): string | null {
    const known = forms.get(sign);
    if (known !== undefined) return known;
    const outline = outlineOf(outlines, sign);
    const rim = outline === '' ? null : `${name}${refs.size}`;
    if (rim !== null) refs.set(rim, registerRim(document.context, outline));
    forms.set(sign, rim);
    return rim;
  }

  return {
    name,
    ref: font.ref,
    encode: (text) => `<${[...text].map(codeOf).join('')}>`,
    rims: (text) => [...text].map(rimOf),
    rimForms: () => refs,
  };
}

/** Outline of a sign in path operators, in thousandths of the em, y up. */
function outlineOf(font: Font, sign: string): string {
  const parts: string[] = [];
  let [x, y] = [0, 0];
  for (const { command, args } of font.glyphForCodePoint(sign.codePointAt(0)!)?.path.commands ?? []) {
    const at = args.map((value) => Math.round((value * 1000) / font.unitsPerEm));
    if (command === 'moveTo') parts.push(`${at.join(' ')} m`);
    else if (command === 'lineTo') parts.push(`${at.join(' ')} l`);
    else if (command === 'bezierCurveTo') parts.push(`${at.join(' ')} c`);
    else if (command === 'closePath') parts.push('h');
    else parts.push(`${cubic(x, y, at).join(' ')} c`);
    [x, y] = [at.at(-2) ?? x, at.at(-1) ?? y];
  }
  return parts.join('\n');
}

/** A curve of the second order as one of the third. */
function cubic(x: number, y: number, [cx = 0, cy = 0, ex = 0, ey = 0]: readonly number[]): readonly number[] {
  const towards = (from: number) => (control: number) => Math.round(from + (2 / 3) * (control - from));
  return [towards(x)(cx), towards(y)(cy), towards(ex)(cx), towards(ey)(cy), ex, ey];
}

function registerRim(context: PDFContext, outline: string): PDFRef {
  const stream = context.flateStream(`1 1 1 RG ${rimWidth} w 1 J 1 j\n${outline}\nS`, {
    Type: 'XObject',
    Subtype: 'Form',
    BBox: [-500, -500, 1500, 1500],
    Resources: {},
  });
  stream.dict.set(PDFName.of('FormType'), context.obj(1));
  return context.register(stream);
}
