import type { SurfaceTable } from '../calc/surfaces/surface-table';
import type { EdgeSide } from './draw-home-runs';
import type { From } from './unrolled-grid';

/** Cables of a wall come from its foot; those of a ceiling from the edge that the plan names as seen from below. */
export function homeRunSide({ kind }: Pick<SurfaceTable, 'kind'>, ceilingEntry: EdgeSide, from: From): EdgeSide {
  if (kind === 'wall') return 'bottom';
  if (from === 'inside' || ceilingEntry === 'top' || ceilingEntry === 'bottom') return ceilingEntry;
  return ceilingEntry === 'left' ? 'right' : 'left';
}
