import { bandRows } from '../../plan/band-rows';
import { pathColumns } from '../../plan/path-columns';
import type { Wall } from '../../plan/wall';
import type { PanelShape } from '../panels/panel-views';
import { toMicrometres } from '../surfaces/micrometres';
import { placedPanelType } from '../surfaces/placed-panel-type';
import { MOST_LINES, MOST_PANELS } from '../surfaces/size-limits';

/** Why a wall cannot be laid out at all; its table is empty then. Bands count from 0. */
export type WallFault =
  | { readonly kind: 'panel-missing'; readonly bands: readonly number[] }
  | {
      readonly kind: 'widths-differ';
      readonly bands: readonly number[];
      readonly widthMm: number;
      readonly firstMm: number;
    }
  | { readonly kind: 'too-many-panels'; readonly panels: number; readonly left: number }
  | { readonly kind: 'too-many-columns'; readonly columns: number };

/** The fault of each wall, or null, in order; walls share MOST_PANELS, first come first served. */
export function wallFaults(
  walls: readonly Wall[],
  shapes: ReadonlyMap<string, PanelShape>,
): readonly (WallFault | null)[] {
  let left = MOST_PANELS;
  return walls.map((wall) => {
    const fault = wallFault(wall, shapes, left);
    if (fault === null) left -= pathColumns(wall.path) * bandRows(wall.bands);
    return fault;
  });
}

function wallFault(wall: Wall, shapes: ReadonlyMap<string, PanelShape>, left: number): WallFault | null {
  const missing = wall.bands.flatMap((band, i) => (shapes.has(band.panelId) ? [] : [i]));
  if (missing.length > 0) return { kind: 'panel-missing', bands: missing };
  const widths = wall.bands.map((band) => placedPanelType(shapes.get(band.panelId)!, band.turnDeg).widthMm);
  const firstMm = widths[0]!;
  const other = widths.flatMap((width, i) => (toMicrometres(width) === toMicrometres(firstMm) ? [] : [i]));
  if (other.length > 0) return { kind: 'widths-differ', bands: other, widthMm: widths[other[0]!]!, firstMm };
  const columns = pathColumns(wall.path);
  const panels = columns * bandRows(wall.bands);
  if (panels > left) return { kind: 'too-many-panels', panels, left };
  return columns > MOST_LINES ? { kind: 'too-many-columns', columns } : null;
}
