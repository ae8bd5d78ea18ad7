import { type QrPath, qrPath, quietModules } from '../qr-path';
import type { LabelRoom } from './fit-label';

/** A code on a label and the side that it takes with its quiet zone. */
export interface LabelCode {
  readonly path: QrPath;
  readonly sideMm: number;
}

/** Side of a module: what cameras of phones read from a hand's distance (common practice, no source). */
const moduleMm = { most: 0.6, least: 0.35 } as const;
/** Most of a label's width that its code may take; the text needs the rest. */
const mostShare = 0.5;

/** The code for a link in the room of a label, of the surer level where it has room; null where none would be readable. */
export function labelCode(link: string, { widthMm, heightMm }: LabelRoom): LabelCode | null {
  const side = Math.min(heightMm, widthMm * mostShare);
  for (const level of ['M', 'L'] as const) {
    const path = qrPath(link, level);
    if (path === null) continue;
    const all = path.modules + 2 * quietModules;
    if (side / all >= moduleMm.least) return { path, sideMm: all * Math.min(moduleMm.most, side / all) };
  }
  return null;
}
