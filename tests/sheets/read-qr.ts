import readCode from 'jsqr';
import type { Lines } from '../../src/sheets/drawing';
import { quietModules } from '../../src/sheets/qr-path';

/** Picture elements a module: a code from a phone's camera has no fewer. */
const pxAModule = 4;

/** Fills outlines in unit modules by the even-odd rule and has the picture read by a decoder that is none of ours. */
export function readQr(lines: Lines, modules: number): string | null {
  const size = (modules + 2 * quietModules) * pxAModule;
  const grey = new Uint8ClampedArray(size * size * 4).fill(255);
  for (let py = 0; py < size; py++) {
    const crossings = crossingsAt(lines, (py + 0.5) / pxAModule - quietModules);
    for (let px = 0; px < size; px++) {
      const x = (px + 0.5) / pxAModule - quietModules;
      const inside = crossings.filter((crossing) => crossing < x).length % 2 === 1;
      if (inside) grey.fill(0, (py * size + px) * 4, (py * size + px) * 4 + 3);
    }
  }
  return readCode(grey, size, size, { inversionAttempts: 'dontInvert' })?.data ?? null;
}

/** Where the rims cross a level line. */
function crossingsAt({ xyMm, ends }: Lines, y: number): number[] {
  const found: number[] = [];
  let first = 0;
  for (const end of ends) {
    for (let i = first; i < end; i++) {
      const j = i + 1 < end ? i + 1 : first;
      const [x1, y1, x2, y2] = [xyMm[2 * i]!, xyMm[2 * i + 1]!, xyMm[2 * j]!, xyMm[2 * j + 1]!];
      if (y1 > y !== y2 > y) found.push(x1 + ((y - y1) / (y2 - y1)) * (x2 - x1));
    }
    first = end;
  }
  return found;
}
