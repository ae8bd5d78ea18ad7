import type { Anchor } from '../../plan/primitives';
import type { Wall } from '../../plan/wall';
import type { CeilingsResults } from '../ceilings/ceiling-result';
import type { SurfaceSet } from '../surfaces/surface-table';

/** Where anchors hold on: walls by their segments, ceilings by their fixed lattice. */
export interface AnchorGround {
  readonly surfaces: SurfaceSet;
  readonly walls: readonly Pick<Wall, 'id' | 'path'>[];
  readonly ceilings: CeilingsResults;
}

/** A panel that an anchor stands for: surface by its place in the set, number on the surface; or why there is none. */
export type Located = { readonly surface: number; readonly panel: number } | { readonly reason: string };

/** The panel that an anchor stands for, now that columns and rows may have come or gone round it. */
export function locateAnchor(anchor: Anchor, ground: AnchorGround): Located {
  const surface = ground.surfaces.surfaces.findIndex(({ surfaceId }) => surfaceId === anchor.surfaceId);
  const table = ground.surfaces.surfaces[surface];
  if (table === undefined) return { reason: 'its surface is not in the plan' };
  const place = table.kind === 'wall' ? placeOnWall(anchor, ground) : placeOnCeiling(anchor, ground);
  if ('reason' in place) return place;
  const { column, row } = place;
  const inside = column >= 1 && column <= table.columns && row >= 1 && row <= table.rows;
  const panel = inside ? table.at[(column - 1) * table.rows + row - 1]! : -1;
  return panel >= 0 ? { surface, panel } : { reason: 'no panel stands at its place' };
}

type LatticePlace = { readonly column: number; readonly row: number } | { readonly reason: string };

function placeOnWall(anchor: Anchor, { walls }: AnchorGround): LatticePlace {
  let before = 0;
  for (const segment of walls.find(({ id }) => id === anchor.surfaceId)?.path ?? []) {
    if (segment.id === anchor.segmentId) {
      if (anchor.column < 1 || anchor.column > segment.columns) {
        return { reason: 'its segment has no such column' };
      }
      return { column: before + anchor.column, row: anchor.row };
    }
    before += segment.columns;
  }
  return { reason: 'its segment is not in the wall' };
}

function placeOnCeiling(anchor: Anchor, { ceilings }: AnchorGround): LatticePlace {
  const ceiling = ceilings.ceilings.find(({ ceilingId }) => ceilingId === anchor.surfaceId);
  if (ceiling === undefined) return { reason: 'its surface is not in the plan' };
  return {
    column: anchor.column - ceiling.firstLatticeColumn + 1,
    row: anchor.row - ceiling.firstLatticeRow + 1,
  };
}

/** The anchor that stands for a panel: what a hand change writes down. Null for a panel on no segment or lattice. */
export function anchorAt(ground: AnchorGround, surface: number, panel: number): Anchor | null {
  const table = ground.surfaces.surfaces[surface]!;
  const column = table.column[panel]!;
  const row = table.row[panel]!;
  if (table.kind === 'ceiling') {
    const ceiling = ground.ceilings.ceilings.find(({ ceilingId }) => ceilingId === table.surfaceId);
    if (ceiling === undefined) return null;
    return {
      surfaceId: table.surfaceId,
      segmentId: null,
      column: ceiling.firstLatticeColumn + column - 1,
      row: ceiling.firstLatticeRow + row - 1,
    };
  }
  let before = 0;
  for (const segment of ground.walls.find(({ id }) => id === table.surfaceId)?.path ?? []) {
    if (column <= before + segment.columns) {
      return { surfaceId: table.surfaceId, segmentId: segment.id, column: column - before, row };
    }
    before += segment.columns;
  }
  return null;
}
