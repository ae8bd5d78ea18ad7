import type { Canvas } from '../../../src/calc/links/canvas';
import { computeLinks, type LinksInputs, type SendingNode } from '../../../src/calc/links/compute-links';
import type { LinksResults } from '../../../src/calc/links/link-result';
import type { SurfacePicture } from '../../../src/calc/picture/picture-result';
import { computePorts } from '../../../src/calc/ports/compute-ports';
import type { Mode } from '../../../src/plan/picture';
import { mode, plainProcessor } from '../ports/plain-items';
import { plainPorts } from '../ports/plain-ports';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';

/** One surface for the links: what its nodes send, a node for each canvas, and what it is served with. */
export interface PlainSending {
  readonly letter?: string;
  readonly canvases: readonly Canvas[];
  readonly served?: readonly Mode[];
  /** Processors that share each node's canvas, side by side. */
  readonly sharing?: number;
}

type PlainLinks = Partial<Pick<LinksInputs, 'timing' | 'containerId' | 'linkId' | 'bySurface'>> & {
  readonly inputGbps?: number | null;
};

/** Inputs of the links chapter for surfaces that send such canvases. */
export function plainLinks(
  sendings: readonly PlainSending[],
  { inputGbps = null, ...rest }: PlainLinks = {},
): LinksInputs {
  const tables = sendings.map(({ letter = 'A' }) =>
    plainSurface({ letter, columns: 1, bands: [{ type: plainType(216), rows: 1 }] }),
  );
  const surfaces = setOf(...tables);
  const processor = plainProcessor();
  const ports = computePorts(
    plainPorts({ surfaces, processors: [{ ...processor, canvas: { ...processor.canvas, inputGbps } }] }),
  );
  const picture = {
    surfaces: sendings.map(({ served = [mode(60, 10)] }, i): SurfacePicture => {
      const { surfaceId, letter } = tables[i]!;
      return { surfaceId, letter, pixels: 1, mode: served[0]!, served, rateBps: 1 };
    }),
    pixels: 1,
    rateBps: 1,
  };
  const nodes = sendings.flatMap(({ canvases, sharing = 1 }, s) =>
    canvases.map(
      ({ width, height }): SendingNode => ({
        name: 'N1',
        surfaceId: tables[s]!.surfaceId,
        letter: tables[s]!.letter,
        canvasWidth: width,
        canvasHeight: height,
        offsetX: 0,
        offsetY: 0,
        crops: Array.from({ length: sharing }, (_, i) => ({
          processor: i + 1,
          x: (i * width) / sharing,
          y: 0,
          width: width / sharing,
          height,
        })),
        outputs: sharing,
      }),
    ),
  );
  return {
    timing: 'reduced-2',
    containerId: null,
    linkId: null,
    bySurface: [],
    surfaces,
    picture,
    ports,
    nodes,
    ...rest,
  };
}

/** Inputs and what they come to. */
export function linked(
  sendings: readonly PlainSending[],
  rest: PlainLinks = {},
): { readonly inputs: LinksInputs; readonly results: LinksResults } {
  const inputs = plainLinks(sendings, rest);
  return { inputs, results: computeLinks(inputs) };
}

/** A surface's own link in the feed. */
export const ownLink = (surfaceId: string, linkId: string | null) => ({
  surfaceId,
  zonesANode: 1,
  linkId,
  canvas: null,
});
