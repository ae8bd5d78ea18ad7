import type { Mode } from '../../plan/picture';
import type { Signal } from '../../plan/signal';
import type { TimingChoice } from '../links/time-canvas';
import type { SurfacePorts } from '../ports/port-result';
import type { SurfaceTable } from '../surfaces/surface-table';
import { brokenLimit, type CanvasLimit } from './broken-limit';

const sentences: Readonly<Record<CanvasLimit, string>> = {
  pixels: 'One panel has more pixels than the processor drives.',
  width: 'One panel is wider than the widest canvas of the processor.',
  height: 'One panel is higher than the highest canvas of the processor.',
  input: 'The input of the processor does not carry the canvas of even one panel.',
};

/** Why not even one panel of a surface is a zone, as a sentence; null where nothing hinders. */
export function whyNoZone(
  table: SurfaceTable,
  ports: SurfacePorts,
  signal: Pick<Signal, 'bySurface'>,
  served: readonly Mode[],
  choice: TimingChoice,
): string | null {
  if (table.count === 0) return null;
  if (ports.processor === null) return 'No processor is chosen.';
  if (ports.portsAProcessor === 0) return 'The processor has no port that works.';
  if (ports.byType.some(({ panelsAPort }) => panelsAPort === 0)) return 'One panel is more than a port carries.';
  for (const { pixelsWide, pixelsHigh } of table.types) {
    const limit = brokenLimit({ width: pixelsWide, height: pixelsHigh }, ports.processor, ports, served, choice);
    if (limit !== null) return sentences[limit];
  }
  const up = signal.bySurface.find(({ surfaceId }) => surfaceId === table.surfaceId)?.zonesUp ?? 1;
  return up > table.rows ? 'There are fewer rows than zones asked for one above the other.' : null;
}
