import type { Check } from '../chapter';
import type { SurfaceTable } from '../surfaces/surface-table';
import { surfaceWords } from '../surfaces/surface-words';
import type { LinksInputs, SendingNode } from './compute-links';
import type { SurfaceLinks } from './link-result';
import { mendInput } from './mend-input';

/**
 * Processors that share a node's canvas each take the whole of it in. A canvas that is one processor's own is judged with
 * the zones, and so is an input that nobody stated.
 */
export function checkInput(inputs: LinksInputs, table: SurfaceTable, links: SurfaceLinks): Check[] {
  const limitGbps = inputs.ports.surfaces.find(({ surfaceId }) => surfaceId === table.surfaceId)?.processor?.canvas
    .inputGbps;
  const isShared = sendsMore(inputs.nodes.filter(({ surfaceId }) => surfaceId === table.surfaceId));
  if (!isShared || limitGbps === undefined || limitGbps === null || links.payloadBps === null) return [];
  const limit = limitGbps * 1e9;
  const fits = links.payloadBps <= limit;
  const fix = fits ? null : mendInput(inputs, links.surfaceId, limit);
  return [
    {
      id: `links.input.${table.letter}`,
      chapter: 'links',
      severity: fits ? 'pass' : 'stop',
      measured: links.payloadBps,
      limit,
      unit: 'bps',
      where: [{ kind: 'surface', name: table.letter }],
      sentence: `The whole canvas of a node of ${surfaceWords(table)} needs {measured}; the input of each processor that takes its part of it carries {limit}.${fits ? '' : ' Let fewer zones share a node.'}`,
      ...(fix === null ? {} : { fix }),
    },
  ];
}

/** Whether a node sends more than the largest part that a processor takes: the last zone's part may be smaller than its canvas. */
function sendsMore(nodes: readonly SendingNode[]): boolean {
  const crops = nodes.flatMap((node) => node.crops);
  const width = Math.max(...crops.map((crop) => crop.width));
  const height = Math.max(...crops.map((crop) => crop.height));
  return nodes.some(({ canvasWidth, canvasHeight }) => canvasWidth > width || canvasHeight > height);
}
