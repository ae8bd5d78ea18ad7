import type { Check } from '../chapter';
import { checkCanvases } from './check-canvases';
import type { NodesInputs } from './compute-nodes';
import type { NodesResults } from './node-result';

/** Canvases, delay, sync and addresses of a stage's nodes. */
export function checkNodes(inputs: NodesInputs, results: NodesResults): Check[] {
  return [...checkCanvases(inputs, results)];
}
