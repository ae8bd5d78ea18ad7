import type { Feed } from '../../plan/feed';
import type { Mode } from '../../plan/picture';
import type { Signal } from '../../plan/signal';
import type { PictureResults } from '../picture/picture-result';
import type { SurfaceSet, SurfaceTable } from '../surfaces/surface-table';
import type { ZonesResults } from '../zones/zone-result';
import { groupZones } from './group-zones';
import type { NodesResults, RenderNode, SurfaceNodes } from './node-result';
import { enclosing, type PixelRectangle, zoneRectangle } from './zone-rectangle';

type FeedGivens = Pick<Feed, 'zonesANode' | 'equalCanvases' | 'bySurface'>;
type NodeChoice = Pick<Signal, 'nodeId' | 'bySurface'>;

/** The stage that nodes are laid out for. */
export interface ZonedStage {
  /** Items of the catalogue that a plan may name. */
  readonly nodeItems: readonly { readonly id: string }[];
  readonly surfaces: SurfaceSet;
  readonly picture: PictureResults;
  readonly zones: ZonesResults['zones'];
}

export type NodesLaidOut = Pick<NodesResults, 'nodes' | 'nodeOfZone' | 'surfaces'>;

/** A zone of the stage with its pixels on the surface's canvas. */
interface PlacedZone {
  readonly index: number;
  readonly firstColumn: number;
  readonly firstRow: number;
  readonly processor: number;
  readonly rectangle: PixelRectangle;
}

/**
 * Gives every zone a node: the canvas is the rectangle round the node's zones on the surface's canvas, each processor takes its
 * own crop of it. A canvas that is larger than that, stated or for being equal, has its blank pixels on the right and below.
 */
export function layOutNodes(feed: FeedGivens, choice: NodeChoice, stage: ZonedStage): NodesLaidOut {
  const nodes: RenderNode[] = [];
  const surfaces = stage.surfaces.surfaces.flatMap((table): SurfaceNodes[] => {
    const itemId = itemOf(choice, stage.nodeItems, table.surfaceId);
    const own = layOutSurface(feed, itemId, stage, table, nodes.length);
    nodes.push(...own);
    return own.length === 0 ? [] : [summary(table.surfaceId, own)];
  });
  const nodeOfZone = new Array<number>(stage.zones.length);
  for (const [node, { crops }] of nodes.entries()) for (const { zone } of crops) nodeOfZone[zone] = node;
  return { nodes, nodeOfZone, surfaces };
}

function layOutSurface(
  feed: FeedGivens,
  itemId: string | null,
  stage: ZonedStage,
  table: SurfaceTable,
  before: number,
): RenderNode[] {
  const { surfaceId, letter } = table;
  const zones = stage.zones.flatMap((zone, index): PlacedZone[] =>
    zone.surfaceId === surfaceId ? [{ ...zone, index, rectangle: zoneRectangle(table, zone) }] : [],
  );
  const own = feed.bySurface.find((entry) => entry.surfaceId === surfaceId);
  const groups = groupZones(zones, own === undefined ? feed.zonesANode : own.zonesANode).map((group) =>
    group.map((i) => zones[i]!),
  );
  const pictures = groups.map((group) => enclosing(group.map(({ rectangle }) => rectangle)));
  const sizes = canvasSizes(pictures, own?.canvas ?? null, feed.equalCanvases);
  const served = stage.picture.surfaces.find((fed) => fed.surfaceId === surfaceId)?.served ?? [];
  return groups.map((group, i): RenderNode => {
    const { left, top, litPixels } = pictures[i]!;
    const { width, height } = sizes[i]!;
    return {
      name: `N${before + i + 1}`,
      itemId,
      surfaceId,
      letter,
      mode: mostAsked(served),
      canvasWidth: width,
      canvasHeight: height,
      offsetX: left,
      offsetY: top,
      crops: group.map(({ index, processor, rectangle }) => ({
        zone: index,
        processor,
        x: rectangle.left - left,
        y: rectangle.top - top,
        width: rectangle.right - rectangle.left,
        height: rectangle.bottom - rectangle.top,
      })),
      outputs: group.length,
      litPixels,
      blankPixels: width * height - litPixels,
    };
  });
}

/** As stated for the surface, else equal or each as large as its zones; never too small for them. */
function canvasSizes(
  pictures: readonly PixelRectangle[],
  stated: { readonly width: number; readonly height: number } | null,
  areEqual: boolean,
): readonly { readonly width: number; readonly height: number }[] {
  const sizes = pictures.map(({ left, right, top, bottom }) => ({ width: right - left, height: bottom - top }));
  if (stated === null && !areEqual) return sizes;
  const width = Math.max(stated?.width ?? 0, ...sizes.map((size) => size.width));
  const height = Math.max(stated?.height ?? 0, ...sizes.map((size) => size.height));
  return sizes.map(() => ({ width, height }));
}

/** The mode of those served whose pixels weigh most on a link; of equals the faster one. Every surface serves at least one. */
function mostAsked(served: readonly Mode[]): Mode {
  const picturesASecond = ({ rate, pictures }: Mode) => (rate.frames * pictures) / rate.seconds;
  const weight = (mode: Mode) => picturesASecond(mode) * mode.depthBits;
  return served.reduce((most, mode) => {
    const more = weight(mode) - weight(most);
    return more > 0 || (more === 0 && picturesASecond(mode) > picturesASecond(most)) ? mode : most;
  });
}

function itemOf(choice: NodeChoice, nodeItems: ZonedStage['nodeItems'], surfaceId: string): string | null {
  const own = choice.bySurface.find((entry) => entry.surfaceId === surfaceId);
  const id = own?.nodeId ?? choice.nodeId;
  return nodeItems.some((item) => item.id === id) ? id : null;
}

function summary(surfaceId: string, nodes: readonly RenderNode[]): SurfaceNodes {
  const [first] = nodes;
  return {
    surfaceId,
    nodes: nodes.length,
    canvasWidth: Math.max(...nodes.map(({ canvasWidth }) => canvasWidth)),
    canvasHeight: Math.max(...nodes.map(({ canvasHeight }) => canvasHeight)),
    isEqual: nodes.every(
      (node) => node.canvasWidth === first!.canvasWidth && node.canvasHeight === first!.canvasHeight,
    ),
  };
}
