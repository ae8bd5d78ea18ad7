import type { Anchor } from '../primitives';

export function isSameAnchor(a: Anchor, b: Anchor): boolean {
  return a.surfaceId === b.surfaceId && a.segmentId === b.segmentId && a.column === b.column && a.row === b.row;
}
