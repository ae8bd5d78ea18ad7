import type { RenderNode } from '../../nodes/node-result';
import type { RunsResults } from '../../runs/run-result';
import type { SurfaceSet } from '../../surfaces/surface-table';
import type { Zone } from '../../zones/zone-result';
import type { PixelMap } from '../map-pixels';

/** What a test picture is painted from. */
export interface TestPictureInputs {
  readonly surfaces: SurfaceSet;
  readonly zones: readonly Zone[];
  readonly runs: Pick<RunsResults, 'runs' | 'order' | 'runOf' | 'placeOf'>;
  readonly nodes: readonly Pick<
    RenderNode,
    'name' | 'surfaceId' | 'canvasWidth' | 'canvasHeight' | 'offsetX' | 'offsetY'
  >[];
  readonly map: PixelMap;
}

/** One panel on the canvas of the node that is painted. */
export interface PictureSpot {
  /** Number through all surfaces. */
  readonly panel: number;
  /** Top left on the canvas. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A panel's rectangle on the canvas of its node; its number must be one of the stage's. */
export function pictureSpot(
  { surfaces, map }: Pick<TestPictureInputs, 'surfaces' | 'map'>,
  panel: number,
): PictureSpot {
  let s = surfaces.surfaces.length - 1;
  while (s > 0 && surfaces.offsets[s]! > panel) s--;
  const table = surfaces.surfaces[s]!;
  const { pixelsWide, pixelsHigh } = table.types[table.type[panel - surfaces.offsets[s]!]!]!;
  return { panel, x: map.x[panel]!, y: map.y[panel]!, width: pixelsWide, height: pixelsHigh };
}
