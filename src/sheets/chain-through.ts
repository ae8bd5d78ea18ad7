import { chainSpot } from './chain-spot';
import type { Chains } from './chains';
import type { Lines } from './drawing';
import { LineBuilder } from './line-builder';
import type { UnrolledGrid } from './unrolled-grid';

/** Line of the chain that a panel is on, from its entry to its end; null where it is on none, or on another surface. */
export function chainThrough(grid: UnrolledGrid, offset: number, chains: Chains, panel: number): Lines | null {
  const chain = chains.list[chains.chainOf[panel] ?? -1];
  if (chain === undefined || chain.surfaceId !== grid.table.surfaceId) return null;
  const lines = new LineBuilder();
  let before = -1;
  for (let place = 0; place < chain.count; place++) {
    const spot = chainSpot(grid, chains.order[chain.start + place]! - offset);
    if (spot !== null && spot.strip === before) lines.lineTo(spot.x, spot.y);
    else if (spot !== null) lines.moveTo(spot.x, spot.y);
    before = spot?.strip ?? -1;
  }
  return lines.build();
}
