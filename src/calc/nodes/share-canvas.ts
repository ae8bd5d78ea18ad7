import { groupZones } from './group-zones';
import type { RenderNode } from './node-result';

/** A node with what its processors take of its canvas, and where that lies on the surface's. */
export interface PlacedCrops {
  readonly offsetX: number;
  readonly offsetY: number;
  readonly crops: readonly Pick<RenderNode['crops'][number], 'x' | 'y' | 'width' | 'height'>[];
}

/** What nodes would send if their zones were shared out otherwise. */
export interface SharedCanvas {
  readonly nodes: number;
  /** Zones on the node that has most of them. */
  readonly zones: number;
  /** As wide as the widest and as high as the highest canvas. */
  readonly width: number;
  readonly height: number;
  /** Whether all canvases are alike without blank pixels. */
  readonly isEqual: boolean;
}

/** The zones of one surface's nodes shared out anew, at most so many a node; at least one node. */
export function shareCanvas(nodes: readonly PlacedCrops[], most: number): SharedCanvas {
  const zones = nodes.flatMap(({ offsetX, offsetY, crops }) =>
    crops.map(({ x, y, width, height }) => ({ left: offsetX + x, top: offsetY + y, width, height })),
  );
  // Rows count upwards and pixels downwards.
  const corners = zones.map(({ left, top, height }) => ({ firstColumn: left, firstRow: -(top + height) }));
  const canvases = groupZones(corners, most).map((group) => {
    const held = group.map((i) => zones[i]!);
    return {
      zones: held.length,
      width: Math.max(...held.map(({ left, width }) => left + width)) - Math.min(...held.map(({ left }) => left)),
      height: Math.max(...held.map(({ top, height }) => top + height)) - Math.min(...held.map(({ top }) => top)),
    };
  });
  const [first] = canvases;
  return {
    nodes: canvases.length,
    zones: Math.max(...canvases.map((canvas) => canvas.zones)),
    width: Math.max(...canvases.map(({ width }) => width)),
    height: Math.max(...canvases.map(({ height }) => height)),
    isEqual: canvases.every(({ width, height }) => width === first!.width && height === first!.height),
  };
}
