import type { Segment } from './wall';

/**
 * The path walked from its other end: segments in the opposite order, each with the joint that it had behind it before it now.
 * Twice mirrored is the path as it was.
 */
export function mirrorPath(path: readonly Segment[]): Segment[] {
  return path
    .map((segment, place) => ({ ...segment, jointBeforeDeg: path[(place + 1) % path.length]!.jointBeforeDeg }))
    .reverse();
}
