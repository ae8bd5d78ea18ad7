import type { Check } from '../chapter';
import type { NodesResults } from './node-result';

/** Longest side of a picture that graphics cards and programs take without exception: common practice, no source. */
const mostSidePx = 16_384;

/** The longest side of any canvas, with the nodes whose is longer than programs take; none without a node. */
export function checkLongestSide({ nodes }: Pick<NodesResults, 'nodes'>): Check[] {
  if (nodes.length === 0) return [];
  const sideOf = (node: (typeof nodes)[number]) => Math.max(node.canvasWidth, node.canvasHeight);
  const longer = nodes.filter((node) => sideOf(node) > mostSidePx);
  return [
    {
      id: 'nodes.longest-side',
      chapter: 'nodes',
      severity: longer.length > 0 ? 'watch' : 'pass',
      measured: Math.max(...nodes.map(sideOf)),
      limit: mostSidePx,
      unit: 'px',
      where: longer.slice(0, 50).map(({ name }) => ({ kind: 'node', name })),
      sentence:
        longer.length > 0
          ? 'The longest side of a canvas has {measured}: many programs and graphics cards refuse a picture of more than {limit} a side.'
          : 'The longest side of a canvas has {measured}; programs and graphics cards take {limit} a side.',
    },
  ];
}
