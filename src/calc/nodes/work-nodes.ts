import type { Source, Step } from '../chapter';
import type { NodesInputs } from './compute-nodes';
import type { NodesResults, RenderNode, SurfaceDelay } from './node-result';

const shared: Source = { kind: 'practice', text: 'a canvas is the rectangle round the zones of its node' };
const tree: Source = { kind: 'practice', text: 'each splitter takes one outlet and gives its own' };
const given: Source = { kind: 'given', text: 'steps of the delay as stated, at the rate of the camera' };

/** Canvas and blank pixels of the first node of every surface, the delay of every surface, and the splitters of the sync. */
export function workNodes({ picture, sync }: NodesInputs, { nodes, delays, sync: lines }: NodesResults): Step[] {
  return [
    ...nodes
      .filter((node, i) => nodes.findIndex(({ surfaceId }) => surfaceId === node.surfaceId) === i)
      .flatMap(workCanvas),
    ...delays.flatMap((delay) => {
      const { letter, mode } = picture.surfaces.find(({ surfaceId }) => surfaceId === delay.surfaceId)!;
      return workDelay(letter, mode.rate, delay);
    }),
    ...workSplitters(sync.outletsASplitter, lines),
  ];
}

function workCanvas({ name, canvasWidth, canvasHeight, litPixels, blankPixels }: RenderNode): Step[] {
  return [
    {
      figure: `canvas of ${name}`,
      symbol: 'canvas',
      expression: 'wide * high',
      numbers: { wide: canvasWidth, high: canvasHeight },
      value: canvasWidth * canvasHeight,
      unit: 'px',
      source: shared,
    },
    {
      figure: `blank pixels of ${name}`,
      symbol: 'blank',
      expression: 'wide * high - lit',
      numbers: { wide: canvasWidth, high: canvasHeight, lit: litPixels },
      value: blankPixels,
      unit: 'px',
      source: shared,
    },
  ];
}

function workDelay(
  letter: string,
  { frames, seconds }: { readonly frames: number; readonly seconds: number },
  delay: SurfaceDelay,
): Step[] {
  if (delay.ms === null) return [];
  const waitFrames = delay.steps.reduce((sum, step) => sum + step.frames, 0);
  const waitMs = delay.steps.reduce((sum, step) => sum + step.ms, 0);
  return [
    {
      figure: `delay of ${letter}`,
      symbol: 'delay',
      expression: '(steps * seconds / frames * 1000 + still) / 1000',
      numbers: { steps: waitFrames, still: waitMs, seconds, frames },
      value: delay.ms / 1000,
      unit: 's',
      source: given,
    },
    {
      figure: `delay of ${letter}`,
      symbol: 'frames',
      expression: 'delay * frames / seconds',
      numbers: { delay: delay.ms / 1000, frames, seconds },
      value: delay.frames!,
      unit: 'count',
      source: given,
    },
  ];
}

function workSplitters(outlets: number, lines: NodesResults['sync']): Step[] {
  const splitters = lines.filter(({ kind }) => kind === 'splitter').length;
  if (splitters === 0) return [];
  return [
    {
      figure: 'splitters of the sync',
      symbol: 'splitters',
      expression: '1 + max(0, ceil((devices - outlets) / (outlets - 1)))',
      numbers: { devices: lines.length - splitters, outlets },
      value: splitters,
      unit: 'count',
      source: tree,
    },
  ];
}
