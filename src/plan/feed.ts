import { z } from 'zod';
import { id } from './primitives';
import { uniqueList } from './unique-list';

/** Pixels of a picture, or of the part of one that a node sends. */
export const canvasSize = z.strictObject({
  width: z.int().min(1).max(1_000_000),
  height: z.int().min(1).max(1_000_000),
});

/** Zones that share the canvas of one node, each processor taking its own rectangle of it; 1: one to one; null: all of a surface. */
const zonesANode = z.int().min(1).max(10_000).nullable();

/** Where a surface is fed otherwise than the stage. */
export const surfaceFeed = z.strictObject({
  surfaceId: id,
  zonesANode,
  /** A link of the published table; null: as the stage. */
  linkId: id.nullable(),
  /** Canvas that every node of the surface sends; null: as large as its zones. */
  canvas: canvasSize.nullable(),
});

/** How pictures reach the processors: nodes, their canvases, and the links between. */
export const feed = z.strictObject({
  zonesANode,
  /** Nodes of one surface with fewer zones than the rest send blank pixels, so that all canvases are equal. */
  equalCanvases: z.boolean(),
  spareNodes: z.int().min(0).max(1000),
  /** Blanking of the picture on the link: VESA CVT reduced 2, reduced 1 or full; a CTA-861 mode of just this size; or a fixed
   *  mode that holds the canvas. */
  timing: z.enum(['reduced-2', 'reduced-1', 'full', 'cta', 'container']),
  /** The fixed mode of 'container'; null: the least that holds the canvas. */
  containerId: id.nullable(),
  /** A link of the published table; null: the least that carries each canvas. */
  linkId: id.nullable(),
  bySurface: uniqueList(surfaceFeed, 100, 'surfaceId'),
});
export type Feed = z.infer<typeof feed>;

/** One node to a processor, equal canvases, the least blanking (common practice, no source). */
export const defaultFeed: Feed = {
  zonesANode: 1,
  equalCanvases: true,
  spareNodes: 1,
  timing: 'reduced-2',
  containerId: null,
  linkId: null,
  bySurface: [],
};
