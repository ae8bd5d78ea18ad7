import type { RenderNode } from '../nodes/node-result';
import type { ThingList } from './thing';

/** Render nodes: content is which processors one feeds, detail its canvas and what each of them takes of it. */
export function nodeThings(
  nodes: readonly Pick<RenderNode, 'name' | 'canvasWidth' | 'canvasHeight' | 'crops'>[],
  processorMarks: readonly string[],
): ThingList {
  const rectangles = nodes.map(({ canvasWidth, canvasHeight, crops }) => {
    const each = crops.map(({ x, y, width, height }) => `${width} × ${height} at ${x}, ${y}`);
    return `canvas ${canvasWidth} × ${canvasHeight} px, of it ${each.join('; ')}`;
  });
  return {
    things: nodes.map(({ name, crops }, node) => {
      return { name, content: crops.map(({ zone }) => processorMarks[zone]).join(' '), detail: rectangles[node]! };
    }),
    sayContent: (index) => {
      const fed = nodes[index]!.crops.map(({ processor }) => processor);
      return [`feeds ${fed.length === 1 ? 'processor' : 'processors'} ${fed.join(', ')}`];
    },
    sayDetail: (index) => [rectangles[index]!],
  };
}
