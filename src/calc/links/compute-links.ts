import type { Feed } from '../../plan/feed';
import type { Mode } from '../../plan/picture';
import type { PlacedCrops } from '../nodes/share-canvas';
import { fedRate } from '../picture/fed-rate';
import type { PictureResults, SurfacePicture } from '../picture/picture-result';
import type { PortsResults } from '../ports/port-result';
import type { SurfaceSet } from '../surfaces/surface-table';
import { videoLinks } from '../tables/video-links';
import type { Canvas } from './canvas';
import { carryCanvas } from './carry-canvas';
import { leastLink } from './least-link';
import { linkById } from './link-by-id';
import type { LinkFit, LinksResults, SurfaceLinks } from './link-result';
import { statedLink } from './stated-link';
import { type NoTiming, type TimingChoice, timeCanvas } from './time-canvas';
import type { VideoTiming } from './video-timing';

/** What a render node sends: one canvas, on one output for each processor that takes its part of it. */
export interface SendingNode {
  readonly name: string;
  readonly surfaceId: string;
  readonly letter: string;
  readonly canvasWidth: number;
  readonly canvasHeight: number;
  /** Top left of its canvas on the surface's own. */
  readonly offsetX: number;
  readonly offsetY: number;
  readonly crops: readonly (PlacedCrops['crops'][number] & { readonly processor: number })[];
  readonly outputs: number;
}

export interface LinksInputs extends TimingChoice {
  readonly linkId: Feed['linkId'];
  readonly bySurface: Feed['bySurface'];
  readonly surfaces: SurfaceSet;
  readonly picture: PictureResults;
  readonly ports: PortsResults;
  readonly nodes: readonly SendingNode[];
}

/** One canvas at one served mode, timed as chosen. */
interface Sent {
  readonly canvas: Canvas;
  readonly mode: Mode;
  readonly timing: VideoTiming | NoTiming;
}

/** Which links carry what the nodes of every surface send. */
export function computeLinks(inputs: LinksInputs): LinksResults {
  return { surfaces: inputs.picture.surfaces.map((fed) => linkSurface(inputs, fed)) };
}

function linkSurface(inputs: LinksInputs, { surfaceId, letter, mode, served }: SurfacePicture): SurfaceLinks {
  const nodes = inputs.nodes.filter((node) => node.surfaceId === surfaceId);
  const sent = distinctCanvases(nodes).flatMap((canvas) =>
    served.map((asked): Sent => ({ canvas, mode: asked, timing: timeCanvas(canvas, fedRate(asked), inputs) })),
  );
  const most = sent.reduce<Sent | null>(
    (worst, next) => (worst === null || asksMore(next, worst) ? next : worst),
    null,
  );
  const outputs = nodes.reduce((sum, node) => sum + node.outputs, 0);
  if (most === null) return { ...nothingSent, surfaceId, letter, mode, outputs };
  const timing = typeof most.timing === 'string' ? null : most.timing;
  const fits = videoLinks.map((link) =>
    worstFit(sent.map(({ canvas, mode: asked }) => carryCanvas(link, canvas, asked, inputs))),
  );
  const least = leastLink(fits, timing ?? most.canvas);
  const stated = statedLink(inputs, surfaceId);
  const chosen = stated === null ? least : (fits.find(({ linkId }) => linkId === stated) ?? null);
  return {
    surfaceId,
    letter,
    canvas: most.canvas,
    mode: most.mode,
    timing,
    noTiming: sent.map((each) => each.timing).find((each) => typeof each === 'string') ?? null,
    payloadBps: timing === null ? null : timing.pixelClockHz * 3 * most.mode.depthBits,
    activeBps: activeBps(most),
    fits,
    leastId: least?.linkId ?? null,
    chosen,
    outputs,
    cables: chosen === null ? 0 : outputs * linkById(chosen.linkId)!.cables,
  };
}

const nothingSent = {
  canvas: null,
  timing: null,
  noTiming: null,
  payloadBps: null,
  activeBps: 0,
  fits: [],
  leastId: null,
  chosen: null,
  cables: 0,
} as const;

function distinctCanvases(nodes: readonly SendingNode[]): readonly Canvas[] {
  const bySize = new Map(
    nodes.map(({ canvasWidth: width, canvasHeight: height }): [string, Canvas] => [
      `${width}x${height}`,
      { width, height },
    ]),
  );
  return [...bySize.values()];
}

function activeBps({ canvas, mode }: Sent): number {
  const { frames, seconds } = fedRate(mode);
  return (canvas.width * canvas.height * frames * 3 * mode.depthBits) / seconds;
}

function asksMore(a: Sent, b: Sent): boolean {
  const bits = ({ timing, mode }: Sent) => (typeof timing === 'string' ? 0 : timing.pixelClockHz * mode.depthBits);
  return bits(a) > bits(b) || (bits(a) === bits(b) && activeBps(a) > activeBps(b));
}

/** What does not fit before what does, then the least margin; what has no figure of need before all. */
function worstFit(fits: readonly LinkFit[]): LinkFit {
  return fits.reduce((worst, next) => {
    if (worst.fits !== next.fits) return worst.fits ? next : worst;
    return (next.marginShare ?? Number.NEGATIVE_INFINITY) < (worst.marginShare ?? Number.NEGATIVE_INFINITY)
      ? next
      : worst;
  });
}
