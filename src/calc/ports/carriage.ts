import type { BitDepth } from '../../plan/primitives';
import type { Processor } from '../../plan/processor';

/** Bits that one pixel takes on the wire at a depth. */
export function carriage({ at8, at10, at12 }: Processor['port']['carriageBits'], depthBits: BitDepth): number {
  return { 8: at8, 10: at10, 12: at12 }[depthBits];
}
