import type { CeilingHole } from '../../plan/ceiling';
import { type Lattice, toHalves } from './lattice';
import { type LatticeWindow, windowOver } from './lattice-window';

/** The places of a lattice that reach into a hole. */
export function holeWindow(hole: CeilingHole, lattice: Lattice): LatticeWindow {
  return windowOver(lattice, {
    fromU: -toHalves(hole.xMm) - toHalves(hole.widthMm),
    toU: -toHalves(hole.xMm),
    fromV: toHalves(hole.yMm),
    toV: toHalves(hole.yMm) + toHalves(hole.depthMm),
  });
}
