import type { Lines } from './drawing';
import { traceEdges } from './trace-edges';
import type { UnrolledGrid } from './unrolled-grid';

/**
 * Outlines round what changed on a surface laid flat, to be drawn heavy and dashed: neighbours that both changed share one.
 * `changed` by panel through all surfaces, 1 where it changed.
 */
export function markChangedUnrolled(grid: UnrolledGrid, offset: number, changed: ArrayLike<number>): Lines {
  const isChanged = (local: number) => local >= 0 && changed[offset + local] === 1;
  return traceEdges(grid, (one, other) => isChanged(one) !== isChanged(other)).build();
}
