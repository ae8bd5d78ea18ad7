import type { SurfaceTable } from '../surfaces/surface-table';
import type { PointMm } from '../walls/wall-result';

export interface CeilingResult {
  readonly ceilingId: string;
  readonly letter: string;
  readonly name: string;
  readonly table: SurfaceTable;
  /** Lattice numbers of column 1 and row 1: column c stands at lattice column firstLatticeColumn + c - 1, so that hand changes anchored to the fixed lattice find their panel. */
  readonly firstLatticeColumn: number;
  readonly firstLatticeRow: number;
  /** Outline in plan, closed without repeating the first point (a circle as 72 points). */
  readonly outlineMm: readonly PointMm[];
  readonly areaM2: number;
  readonly pixels: number;
  /** Share of the first ring's disc (its inside diameter) that it covers; null without a ring. */
  readonly coverShare: number | null;
  /** Plan distance from a wall's face to the panel nearest to it: the least over the columns of all walls, and the greatest
   *  over those of the wall round it (the first ring, or else the nearest wall). 0 where they meet; null without a wall. */
  readonly gapLeastMm: number | null;
  readonly gapGreatestMm: number | null;
}

export interface CeilingsResults {
  readonly ceilings: readonly CeilingResult[];
}
