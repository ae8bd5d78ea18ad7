import type { Lines } from '../sheets/drawing';
import type { Page, PageFace, PagePath, PageText } from '../sheets/pages/page';
import { textWidthMm } from '../sheets/pages/text-width';
import { wholeMicrometres } from '../sheets/whole-micrometres';
import type { PdfFace } from './pdf-face';

/** Points a millimetre (ISO 32000-1, 8.3.2.3: a unit is 1/72 inch). */
export const pointsAMm = 72 / 25.4;

/** Operators that paint a page, in millimetres from its upper left corner. Links are no part of it. */
export function pageToPdfContent({ heightMm, items }: Page, faces: Readonly<Record<PageFace, PdfFace>>): string {
  const unit = pointsAMm.toFixed(9);
  const parts = [`${unit} 0 0 -${unit} 0 ${(heightMm * pointsAMm).toFixed(4)} cm`, '1 j'];
  for (const item of items) {
    if (item.kind === 'path') parts.push(paint(item));
    else if (item.kind === 'text') parts.push(write(item, faces[item.face]));
  }
  return parts.join('\n');
}

function paint({ lines, fill, stroke }: PagePath): string {
  const set = [
    fill === null ? '' : `${colour(fill)} rg`,
    stroke === null
      ? ''
      : `${colour(stroke.colour)} RG ${wholeMicrometres(stroke.widthMm)} w [${stroke.dashesMm.join(' ')}] 0 d`,
  ].filter((part) => part !== '');
  const operator = fill === null ? 'S' : stroke === null ? 'f' : 'B';
  return `${set.join(' ')}\n${path(lines)}${fill === null && stroke === null ? 'n' : operator}`;
}

function path({ xyMm, ends, closed }: Lines): string {
  const parts: string[] = [];
  let point = 0;
  for (const end of ends) {
    for (let first = point; point < end; point++) {
      const x = wholeMicrometres(xyMm[point * 2]!);
      const y = wholeMicrometres(xyMm[point * 2 + 1]!);
      parts.push(`${x} ${y} ${point === first ? 'm' : 'l'}\n`);
    }
    if (closed) parts.push('h\n');
  }
  return parts.join('');
}

/** '#rrggbb' as shares of red, green and blue. */
function colour(hex: string): string {
  const shares = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255);
  return shares.map((share) => String(Math.round(share * 1000) / 1000)).join(' ');
}

const alignShares: Readonly<Record<PageText['align'], number>> = { start: 0, middle: 0.5, end: 1 };

function write({ text, xMm, yMm, sizeMm, face, align, turned, colour: ink, rim }: PageText, pdf: PdfFace): string {
  const back = textWidthMm(text, face, sizeMm) * alignShares[align];
  const x = wholeMicrometres(turned ? xMm : xMm - back);
  const y = wholeMicrometres(turned ? yMm + back : yMm);
  const size = wholeMicrometres(sizeMm);
  const shown = `BT /${pdf.name} ${size} Tf ${colour(ink)} rg ${direction(turned, 1)} ${x} ${y} Tm ${pdf.encode(text)} Tj ET`;
  if (!rim) return shown;
  let along = 0;
  const rims = pdf.rims(text).flatMap((name, i) => {
    const at = along;
    along += textWidthMm([...text][i]!, face, sizeMm);
    if (name === null) return [];
    const [rx, ry] = turned ? [x, wholeMicrometres(y - at)] : [wholeMicrometres(x + at), y];
    return [`q ${direction(turned, size / 1000)} ${rx} ${ry} cm /${name} Do Q`];
  });
  return [...rims, shown].join('\n');
}

/** First four numbers of the matrix that writes level, or upwards, where y points down. */
function direction(turned: boolean, scale: number): string {
  const share = Math.round(scale * 1e7) / 1e7;
  return turned ? `0 -${share} -${share} 0` : `${share} 0 0 -${share}`;
}
