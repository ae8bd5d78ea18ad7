import { encode } from 'uqr';
import type { Lines } from './drawing';
import { LineBuilder } from './line-builder';

/** How much of a code may be lost before it cannot be read: 7, 15, 25 or 30 % (ISO/IEC 18004). */
export type QrLevel = 'L' | 'M' | 'Q' | 'H';

/** A QR code as outlines to be filled, by either winding rule; one unit is one module, the upper left corner at 0, 0. */
export interface QrPath {
  /** Modules a side, from 21 to 177, without the quiet zone round it. */
  readonly modules: number;
  readonly lines: Lines;
}

/** Modules that stay empty on each side of a code (ISO/IEC 18004). */
export const quietModules = 4;

/** East, south, west, north. */
const stepX = [1, 0, -1, 0] as const;
const stepY = [0, 1, 0, -1] as const;

/** The code for a text; null where it holds more than a code of that level carries, or half a character. */
export function qrPath(text: string, level: QrLevel): QrPath | null {
  const dark = darkModules(text, level);
  return dark === null ? null : { modules: dark.length, lines: traceOutlines(dark) };
}

function darkModules(text: string, level: QrLevel): readonly (readonly boolean[])[] | null {
  try {
    return encode(text, { ecc: level, border: 0 }).data;
  } catch {
    return null;
  }
}

/** The rims of all dark areas as closed lines with the dark on their right: no seams where modules touch. */
function traceOutlines(dark: readonly (readonly boolean[])[]): Lines {
  const size = dark.length;
  const isDark = (x: number, y: number) => dark[y]?.[x] === true;
  /** Whether a rim leaves a corner of modules in a direction: dark on its right, light on its left. */
  const leaves = (x: number, y: number, direction: number) => {
    const [right, left] = beside[direction]!;
    return isDark(x + right![0]!, y + right![1]!) && !isDark(x + left![0]!, y + left![1]!);
  };
  const walked = new Uint8Array((size + 1) * (size + 1) * 4);
  const lines = new LineBuilder();
  for (let y = 0; y <= size; y++) {
    for (let x = 0; x <= size; x++) {
      for (let direction = 0; direction < 4; direction++) {
        if (leaves(x, y, direction) && walked[((size + 1) * y + x) * 4 + direction] === 0) walk(x, y, direction);
      }
    }
  }
  return lines.build(true);

  function walk(fromX: number, fromY: number, towards: number): void {
    let [x, y, direction] = [fromX, fromY, towards];
    lines.moveTo(x, y);
    for (;;) {
      walked[((size + 1) * y + x) * 4 + direction] = 1;
      x += stepX[direction]!;
      y += stepY[direction]!;
      // Where two dark modules touch by a corner only, the rim stays with its own: right before straight on before left.
      const next = [direction + 1, direction, direction + 3]
        .map((turn) => turn % 4)
        .find((turn) => leaves(x, y, turn))!;
      if (x === fromX && y === fromY && next === towards) return;
      if (next !== direction) lines.lineTo(x, y);
      direction = next;
    }
  }
}

/** For each direction the modules on the right and on the left of a rim that leaves a corner, as seen from that corner. */
const beside = [
  [
    [0, 0],
    [0, -1],
  ],
  [
    [-1, 0],
    [0, 0],
  ],
  [
    [-1, -1],
    [-1, 0],
  ],
  [
    [0, -1],
    [-1, -1],
  ],
] as const;
