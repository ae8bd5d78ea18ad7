import type { Mode } from '../../plan/picture';
import type { Processor } from '../../plan/processor';
import type { Canvas } from '../links/canvas';
import type { TimingChoice } from '../links/time-canvas';
import type { SurfacePorts } from '../ports/port-result';
import { inputPayload } from './input-payload';

/** What keeps a canvas from fitting a processor: its pixels, width, height or input. */
export type CanvasLimit = 'pixels' | 'width' | 'height' | 'input';

const leastBlanking: TimingChoice = { timing: 'reduced-2', containerId: null };

/** The first limit of a processor that a canvas breaks at the served modes; null where it keeps all. */
export function brokenLimit(
  canvas: Canvas,
  processor: Processor,
  ports: Pick<SurfacePorts, 'processorPixels'>,
  served: readonly Mode[],
  choice: TimingChoice,
): CanvasLimit | null {
  if (canvas.width > processor.canvas.widest) return 'width';
  if (canvas.height > processor.canvas.highest) return 'height';
  if (canvas.width * canvas.height > ports.processorPixels) return 'pixels';
  const { inputGbps } = processor.canvas;
  if (inputGbps === null) return null;
  // A canvas that has no timing as chosen is cut by the least blanking there is; the links say that its timing is missing.
  const payload = inputPayload(canvas, served, choice) ?? inputPayload(canvas, served, leastBlanking);
  return payload === null || payload > inputGbps * 1e9 ? 'input' : null;
}
