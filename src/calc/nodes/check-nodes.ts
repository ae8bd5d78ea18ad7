import type { Check } from '../chapter';
import { checkSurfaceNames } from '../surfaces/check-surface-names';
import { checkAddresses } from './check-addresses';
import { checkCanvases } from './check-canvases';
import { checkDelays } from './check-delays';
import { checkLongestSide } from './check-longest-side';
import { checkSync } from './check-sync';
import type { NodesInputs } from './compute-nodes';
import type { NodesResults } from './node-result';

/** Canvases, delay, sync and addresses of a stage's nodes. */
export function checkNodes(inputs: NodesInputs, results: NodesResults): Check[] {
  const { surfaces, picture } = inputs;
  const fed = new Set(results.surfaces.map(({ surfaceId }) => surfaceId));
  return [
    ...checkSurfaceNames(surfaces, {
      id: 'nodes.feed-names',
      chapter: 'nodes',
      path: ['feed', 'bySurface'],
      field: 'surfaceId',
      entries: inputs.feed.bySurface,
      keep: (own, isThere) => (isThere(own.surfaceId) ? own : null),
      sentence: 'Nodes of their own for a surface that is not there: {measured}.',
      called: 'nodes by surface',
    }),
    ...checkCanvases(inputs, results),
    ...checkLongestSide(results),
    ...checkDelays(inputs.delay, surfaces, results.delays),
    ...checkSync(
      inputs.sync.reference,
      picture.surfaces.filter(({ surfaceId }) => fed.has(surfaceId)),
    ),
    ...checkAddresses(inputs.addresses, results.addresses),
  ];
}
