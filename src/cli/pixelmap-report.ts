import { mapPixels } from '../calc/outputs/map-pixels';
import type { OutputsInputs } from '../calc/outputs/outputs-inputs';
import type { Plan } from '../plan/plan';
import { alignColumns } from './align-columns';
import { wrapText } from './wrap-text';

/** What `pixelmap` prints: a line a node, and the panels that no node feeds. Sizes and places in pixels. */
export function pixelmapReport(
  plan: Pick<Plan, 'name' | 'revision'>,
  { surfaces, zones, fed }: OutputsInputs,
  width: number,
): string {
  const title = `Pixel map: ${plan.name}${plan.revision === '' ? '' : `, revision ${plan.revision}`}`;
  const { nodeOf } = mapPixels(surfaces, zones, fed);
  const panels = new Map<number, number>();
  for (const node of nodeOf) panels.set(node, (panels.get(node) ?? 0) + 1);
  const rows = fed.nodes.map((node, index) => [
    node.name,
    node.letter,
    `${node.canvasWidth} x ${node.canvasHeight}`,
    `${node.offsetX}, ${node.offsetY}`,
    node.crops.map(({ processor }) => processor).join(' '),
    `${panels.get(index) ?? 0}`,
  ]);
  return [
    ...wrapText(title, width),
    '',
    ...alignColumns(
      [['Node', 'Surface', 'Canvas', 'Begins at', 'Processors', 'Panels'], ...rows],
      ['l', 'l', 'r', 'r', 'l', 'r'],
    ),
    '',
    `Panels without a node: ${panels.get(-1) ?? 0}`,
    '',
  ].join('\n');
}
