import type { Ceiling } from '../../plan/ceiling';
import type { PanelShape } from '../panels/panel-views';
import { placedPanelType } from '../surfaces/placed-panel-type';
import { MOST_LINES } from '../surfaces/size-limits';
import type { PlacedPanelType } from '../surfaces/surface-table';
import { type ClippedLattice, clipCeiling } from './clip-ceiling';
import { type Lattice, latticeOf } from './lattice';

/** Why a ceiling has no panels. */
export type CeilingFault =
  | { readonly kind: 'panel-missing' }
  | { readonly kind: 'no-panels' }
  /** Panels as far as they were counted: null where the lattice under the outline is too large to be looked at. */
  | { readonly kind: 'too-many-panels'; readonly panels: number | null; readonly left: number };

/** A ceiling's lattice with its panels. */
export interface LatticeCeiling {
  readonly type: PlacedPanelType;
  readonly lattice: Lattice;
  readonly clipped: ClippedLattice;
}

/** Clips a ceiling's lattice, or says why it has no panels; `left` is how many panels the plan may still have. */
export function latticeCeiling(
  ceiling: Ceiling,
  shapes: ReadonlyMap<string, PanelShape>,
  left: number,
): LatticeCeiling | CeilingFault {
  const shape = shapes.get(ceiling.panelId);
  if (shape === undefined) return { kind: 'panel-missing' };
  const type = placedPanelType(shape, ceiling.turnDeg);
  const lattice = latticeOf(ceiling.place, type);
  const clipped = clipCeiling(ceiling, lattice);
  if (clipped === null) return { kind: 'too-many-panels', panels: null, left };
  if (clipped.count === 0) return { kind: 'no-panels' };
  const tooLong = clipped.columns > MOST_LINES || clipped.rows > MOST_LINES;
  return clipped.count > left || tooLong
    ? { kind: 'too-many-panels', panels: clipped.count, left }
    : { type, lattice, clipped };
}
