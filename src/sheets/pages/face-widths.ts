import faces from '../../../shared/print-faces.json';
import type { PageFace } from './page';

interface Stretch {
  readonly from: number;
  readonly count?: number;
  readonly each?: number;
  readonly widths?: readonly number[];
}

/** Advance widths by code point in thousandths of the em; 0 where the face has no such sign. */
export const faceWidths: Readonly<Record<PageFace, Uint16Array>> = {
  sans: spread(faces.faces.sans),
  strong: spread(faces.faces.strong),
  mono: spread(faces.faces.mono),
};

/** Height of capitals as a share of the em, the same in all faces. */
export const capHeight = faces.capHeight / 1000;

function spread(stretches: readonly Stretch[]): Uint16Array {
  const widths = new Uint16Array(0x10000);
  for (const { from, count = 0, each = 0, widths: listed } of stretches) {
    if (listed === undefined) widths.fill(each, from, from + count);
    else widths.set(listed, from);
  }
  return widths;
}
