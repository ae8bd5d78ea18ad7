import { quietModules } from '../../src/sheets/qr-path';
import { readQr } from '../sheets/read-qr';
import type { PdfPage } from './read-pdf-pages';

/** What the codes under the links of a page say to a decoder that is none of ours; null where it reads none. */
export function readPageCodes({ paths, links, heightMm }: PdfPage): readonly (string | null)[] {
  return links.map(({ box }) => {
    const [left, bottom, right] = box as [number, number, number, number];
    const top = heightMm - (bottom + right - left);
    const isInside = ([x, y]: readonly [number, number]) => x > left && x < right && y > top && y < top + right - left;
    const code = paths.find(({ isFilled, lines }) => isFilled && lines.every((line) => line.every(isInside)));
    if (code === undefined) return null;
    // Its corner squares touch the edge of the code: what is left of the link's box is the quiet zone.
    const module = (Math.min(...code.lines.flatMap((line) => line.map(([x]) => x))) - left) / quietModules;
    const modules = Math.round((right - left) / module) - 2 * quietModules;
    const xyMm = code.lines.flatMap((line) =>
      line.flatMap(([x, y]) => [(x - left) / module - quietModules, (y - top) / module - quietModules]),
    );
    let end = 0;
    const ends = code.lines.map((line) => {
      end += line.length;
      return end;
    });
    return readQr({ xyMm: Float64Array.from(xyMm), ends: Uint32Array.from(ends), closed: true }, modules);
  });
}
