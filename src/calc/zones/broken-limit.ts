import type { Mode } from '../../plan/picture';
import type { Processor } from '../../plan/processor';
import type { SurfacePorts } from '../ports/port-result';
import { type Canvas, inputPayload } from './input-payload';

/** What keeps a canvas from fitting a processor: its pixels, width, height or input. */
export type CanvasLimit = 'pixels' | 'width' | 'height' | 'input';

/** The first limit of a processor that a canvas breaks at the served modes; null where it keeps all. */
export function brokenLimit(
  canvas: Canvas,
  processor: Processor,
  ports: Pick<SurfacePorts, 'processorPixels'>,
  served: readonly Mode[],
): CanvasLimit | null {
  if (canvas.width > processor.canvas.widest) return 'width';
  if (canvas.height > processor.canvas.highest) return 'height';
  if (canvas.width * canvas.height > ports.processorPixels) return 'pixels';
  const { inputGbps } = processor.canvas;
  if (inputGbps !== null && inputPayload(canvas, served) > inputGbps * 1e9) return 'input';
  return null;
}
