import type { Check } from '../chapter';
import type { SurfaceTable } from '../surfaces/surface-table';
import { surfaceWords } from '../surfaces/surface-words';
import type { LinksInputs } from './compute-links';
import type { SurfaceLinks } from './link-result';

/**
 * Processors that share a node's canvas each take the whole of it in. A canvas that is one processor's own is judged with
 * the zones, and so is an input that nobody stated.
 */
export function checkInput(inputs: LinksInputs, table: SurfaceTable, links: SurfaceLinks): Check[] {
  const limitGbps = inputs.ports.surfaces.find(({ surfaceId }) => surfaceId === table.surfaceId)?.processor?.canvas
    .inputGbps;
  const isShared = inputs.nodes.some(
    ({ surfaceId, crops, canvasWidth, canvasHeight }) =>
      surfaceId === table.surfaceId && crops.some(({ width, height }) => width < canvasWidth || height < canvasHeight),
  );
  if (!isShared || limitGbps === undefined || limitGbps === null || links.payloadBps === null) return [];
  const limit = limitGbps * 1e9;
  const fits = links.payloadBps <= limit;
  return [
    {
      id: `links.input.${table.letter}`,
      chapter: 'links',
      severity: fits ? 'pass' : 'stop',
      measured: links.payloadBps,
      limit,
      unit: 'bps',
      where: [{ kind: 'surface', name: table.letter }],
      sentence: `The whole canvas of a node of ${surfaceWords(table)} needs {measured}; the input of each processor that takes its part of it carries {limit}.`,
    },
  ];
}
