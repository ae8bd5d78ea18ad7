import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A page of a PDF file as a reader that is none of ours sees it; lengths in mm, y down from the upper edge. */
export interface PdfPage {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Every string that is shown, in order. */
  readonly texts: readonly string[];
  /** Where each of them begins on its baseline, and how long it is. */
  readonly places: readonly {
    readonly text: string;
    readonly xMm: number;
    readonly yMm: number;
    readonly longMm: number;
  }[];
  /** Every path that is painted, as its polylines, outside of forms. */
  readonly paths: readonly {
    readonly lines: readonly (readonly (readonly [number, number])[])[];
    readonly widthMm: number;
    readonly isFilled: boolean;
  }[];
  readonly links: readonly { readonly url: string; readonly box: readonly number[] }[];
}

export interface PdfFile {
  readonly title: string;
  readonly pages: readonly PdfPage[];
  readonly printScaling: string | undefined;
}

const mm = (points: number) => (points * 25.4) / 72;
type Matrix = readonly [number, number, number, number, number, number];

/** Without paths, which take their time, where only texts are asked. */
export async function readPdf(bytes: Uint8Array, wanted: 'all' | 'texts' = 'all'): Promise<PdfFile> {
  const task = getDocument({ data: Uint8Array.from(bytes), useSystemFonts: false, verbosity: 0 });
  const document = await task.promise;
  const { info } = (await document.getMetadata()) as { info: { Title?: string } };
  const preferences = (await document.getViewerPreferences()) as { PrintScaling?: string } | null;
  const pages: PdfPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const [left, bottom, right, top] = page.view as [number, number, number, number];
    const content = await page.getTextContent({ disableNormalization: true });
    const items = content.items.flatMap((item) => ('str' in item && item.str !== '' ? [item] : []));
    const annotations = (await page.getAnnotations()) as { url?: string; unsafeUrl?: string; rect: number[] }[];
    const operators = wanted === 'all' ? await page.getOperatorList() : { fnArray: [], argsArray: [] };
    pages.push({
      widthMm: mm(right - left),
      heightMm: mm(top - bottom),
      texts: items.map(({ str }) => str),
      places: items.map(({ str, transform, width }) => ({
        text: str,
        xMm: mm(transform[4] as number),
        yMm: mm(top - (transform[5] as number)),
        longMm: mm(width),
      })),
      paths: pathsOf(operators.fnArray, operators.argsArray as readonly (readonly unknown[])[], top),
      links: annotations.map(({ unsafeUrl, url, rect }) => ({ url: unsafeUrl ?? url ?? '', box: rect.map(mm) })),
    });
  }
  await task.destroy();
  return { title: info.Title ?? '', pages, printScaling: preferences?.PrintScaling };
}

function pathsOf(functions: readonly number[], args: readonly (readonly unknown[])[], top: number): PdfPage['paths'] {
  const found: PdfPage['paths'][number][] = [];
  const stack: { matrix: Matrix; width: number }[] = [];
  let state: { matrix: Matrix; width: number } = { matrix: [1, 0, 0, 1, 0, 0], width: 1 };
  let forms = 0;
  functions.forEach((operator, i) => {
    const given = args[i] as readonly number[];
    if (operator === OPS.save) stack.push(state);
    else if (operator === OPS.restore) state = stack.pop() ?? state;
    else if (operator === OPS.transform) state = { ...state, matrix: times(state.matrix, given as unknown as Matrix) };
    else if (operator === OPS.setLineWidth) state = { ...state, width: given[0]! };
    else if (operator === OPS.paintFormXObjectBegin) forms++;
    else if (operator === OPS.paintFormXObjectEnd) forms--;
    else if (operator === OPS.constructPath && forms === 0) {
      const [paint, [data]] = args[i] as unknown as [number, [Float32Array | null]];
      if (data === null) return;
      const isFilled = paint === OPS.fill || paint === OPS.eoFill || paint === OPS.fillStroke;
      found.push({
        lines: polylines(data).map((line) => line.map(([x, y]) => onPaper(state.matrix, x, y, top))),
        widthMm: mm(state.width * Math.abs(state.matrix[0])),
        isFilled,
      });
    }
  });
  return found;
}

/** Moves, lines and closings as the reader packs them: an operation, then its point. */
function polylines(data: Float32Array): [number, number][][] {
  const lines: [number, number][][] = [];
  for (let i = 0; i < data.length; ) {
    const operation = data[i++];
    if (operation === 4) lines.at(-1)!.push(lines.at(-1)![0]!);
    else if (operation === 0 || operation === 1) {
      const point: [number, number] = [data[i++]!, data[i++]!];
      if (operation === 0) lines.push([point]);
      else lines.at(-1)!.push(point);
    } else throw new Error(`a page has no curves, yet an operation ${operation}`);
  }
  return lines;
}

function times([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix {
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

function onPaper([a, b, c, d, e, f]: Matrix, x: number, y: number, top: number): [number, number] {
  return [mm(a * x + c * y + e), mm(top - (b * x + d * y + f))];
}
