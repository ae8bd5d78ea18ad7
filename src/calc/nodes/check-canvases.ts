import type { Node } from '../../plan/node';
import type { Check } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import type { SurfaceTable } from '../surfaces/surface-table';
import { surfaceWords } from '../surfaces/surface-words';
import type { NodesInputs } from './compute-nodes';
import { evenOutZones } from './even-out-zones';
import { mendCanvas } from './mend-canvas';
import type { NodesResults, RenderNode, SurfaceNodes } from './node-result';

type CanvasInputs = Pick<NodesInputs, 'feed' | 'signal' | 'nodeItems' | 'surfaces' | 'zones'>;

/** One surface with the nodes that feed it. */
interface Fed {
  readonly inputs: CanvasInputs;
  readonly table: SurfaceTable;
  readonly summary: SurfaceNodes;
  readonly nodes: readonly RenderNode[];
  readonly item: NodesInputs['nodeItems'][number] | null;
}

/** Whether the canvases of every surface are equal, hold their crops, and are what the chosen node sends. */
export function checkCanvases(inputs: CanvasInputs, results: Pick<NodesResults, 'nodes' | 'surfaces'>): Check[] {
  return inputs.surfaces.surfaces.flatMap((table) => {
    const summary = results.surfaces.find(({ surfaceId }) => surfaceId === table.surfaceId);
    if (summary === undefined) return [];
    const nodes = results.nodes.filter(({ surfaceId }) => surfaceId === table.surfaceId);
    const item = inputs.nodeItems.find(({ id }) => id === nodes[0]!.itemId) ?? null;
    const fed: Fed = { inputs, table, summary, nodes, item };
    return [
      checkEqual(fed),
      ...checkStated(fed),
      ...(item === null ? [checkChosen(fed)] : [checkPixels(fed, item), checkOutputs(fed, item)]),
    ];
  });
}

const base = ({ table }: Fed, what: string) => ({
  id: `nodes.${what}.${table.letter}`,
  chapter: 'nodes' as const,
  where: [{ kind: 'surface' as const, name: table.letter }],
});

const sizeValues = ({ canvasWidth, canvasHeight }: Pick<SurfaceNodes, 'canvasWidth' | 'canvasHeight'>) => ({
  wide: { value: canvasWidth, unit: 'count' as const },
  high: { value: canvasHeight, unit: 'count' as const },
});

function checkEqual(fed: Fed): Check {
  const { summary, nodes, table } = fed;
  const largest = ({ canvasWidth, canvasHeight }: RenderNode) =>
    canvasWidth === summary.canvasWidth && canvasHeight === summary.canvasHeight;
  const odd = nodes.filter((node) => !largest(node));
  const common = { ...base(fed, 'equal'), measured: odd.length, limit: 0, unit: 'count' as const };
  if (summary.isEqual) {
    return {
      ...common,
      measured: 0,
      severity: 'pass',
      sentence: `Every node of ${surfaceWords(table)} sends the same canvas of {wide} by {high} pixels.`,
      values: sizeValues(summary),
    };
  }
  const padded = setFieldsFix('Make all canvases equal', 'equal canvases', [
    { path: ['feed', 'equalCanvases'], value: true },
  ]);
  return {
    ...common,
    severity: 'watch',
    where: odd.slice(0, 50).map(({ name }) => ({ kind: 'node', name })),
    sentence: `Nodes of ${surfaceWords(table)} send unlike canvases: {measured} of them not {wide} by {high} pixels, the first being {oddWide} by {oddHigh}.`,
    values: {
      ...sizeValues(summary),
      oddWide: { value: odd[0]!.canvasWidth, unit: 'count' },
      oddHigh: { value: odd[0]!.canvasHeight, unit: 'count' },
    },
    fix: evenOutZones(fed.inputs.feed.bySurface, table.surfaceId, nodes, fed.item, padded) ?? padded,
  };
}

/** A canvas stated for the surface that is smaller than what its nodes must send: they send what they must. */
function checkStated(fed: Fed): Check[] {
  const { inputs, table, summary } = fed;
  const own = inputs.feed.bySurface.findIndex(({ surfaceId }) => surfaceId === table.surfaceId);
  const stated = inputs.feed.bySurface[own]?.canvas ?? null;
  if (stated === null) return [];
  const isNarrow = stated.width < summary.canvasWidth;
  const isShort = stated.height < summary.canvasHeight;
  const { canvasWidth: width, canvasHeight: height } = summary;
  const holds = !isNarrow && !isShort;
  return [
    {
      ...base(fed, 'stated-canvas'),
      severity: holds ? 'pass' : 'stop',
      measured: isShort && !isNarrow ? height : width,
      limit: isShort && !isNarrow ? stated.height : stated.width,
      unit: 'px',
      sentence: holds
        ? `The canvas stated for ${surfaceWords(table)} holds what each of its nodes must send.`
        : `The canvas stated for ${surfaceWords(table)} is {limit} ${isNarrow ? 'wide' : 'high'}, but its zones need {measured}.`,
      ...(holds
        ? {}
        : {
            fix: setFieldsFix('As large as its zones need', 'canvas', [
              { path: ['feed', 'bySurface', own, 'canvas'], value: { width, height } },
            ]),
          }),
    },
  ];
}

function checkChosen(fed: Fed): Check {
  const { inputs, table } = fed;
  const own = inputs.signal.bySurface.findIndex(({ surfaceId }) => surfaceId === table.surfaceId);
  const ownId = inputs.signal.bySurface[own]?.nodeId ?? null;
  const stageId = inputs.signal.nodeId;
  const isNamed = (ownId ?? stageId) !== null;
  const isUnknown = (id: string | null) => id !== null && !inputs.nodeItems.some((item) => item.id === id);
  // Without one of its own a surface has the stage's, which may be unknown as well.
  const unknown = [
    ...(isUnknown(ownId) ? [['signal', 'bySurface', own, 'nodeId']] : []),
    ...(isUnknown(stageId) ? [['signal', 'nodeId']] : []),
  ];
  const common = { ...base(fed, 'item'), measured: null, limit: null, unit: 'count' as const };
  if (!isNamed) {
    return {
      ...common,
      severity: 'offer',
      sentence: `Not stated: which render node feeds ${surfaceWords(table)}, and so what canvas and how many outputs it has.`,
    };
  }
  return {
    ...common,
    severity: 'watch',
    sentence: `The render node chosen for ${surfaceWords(table)} is not in the catalogue.`,
    fix: setFieldsFix(
      'Choose none',
      'render node',
      unknown.map((path) => ({ path, value: null })),
    ),
  };
}

function checkPixels(fed: Fed, item: Pick<Node, 'canvasPixels'>): Check {
  const { inputs, summary, table, nodes } = fed;
  const measured = summary.canvasWidth * summary.canvasHeight;
  const limit = item.canvasPixels;
  const isShared = nodes.some(({ crops }) => crops.length > 1);
  const fix = limit !== null && measured > limit ? mendCanvas(inputs, table.surfaceId, nodes, limit) : null;
  return {
    ...base(fed, 'canvas'),
    severity: limit === null ? 'offer' : measured > limit ? 'stop' : 'pass',
    measured,
    limit,
    unit: 'px',
    sentence:
      limit === null
        ? `Not stated: the largest canvas of the render node. ${inCapitals(table)} needs {measured}.`
        : `A canvas of ${surfaceWords(table)} has {measured}; the sheet of its render node says {limit}.${isShared && measured > limit ? ' Fewer zones on one node make it smaller.' : ''}`,
    ...(fix === null ? {} : { fix }),
  };
}

function inCapitals(table: SurfaceTable): string {
  const words = surfaceWords(table);
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function checkOutputs(fed: Fed, { outputs }: Pick<Node, 'outputs'>): Check {
  const { nodes, table } = fed;
  const short = nodes.filter((node) => node.outputs > outputs);
  const measured = Math.max(...nodes.map((node) => node.outputs));
  const common = { ...base(fed, 'outputs'), measured, limit: outputs, unit: 'count' as const };
  if (short.length === 0) {
    return {
      ...common,
      severity: 'pass',
      sentence: `A node of ${surfaceWords(table)} feeds up to {measured} processors, one on each of its {limit} outputs.`,
    };
  }
  return {
    ...common,
    severity: 'watch',
    where: short.slice(0, 50).map(({ name }) => ({ kind: 'node', name })),
    sentence: `A node of ${surfaceWords(table)} feeds {measured} processors and has {limit} outputs: its picture must be distributed to them, the same one to each.`,
  };
}
