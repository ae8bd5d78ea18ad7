import type { Evaluation } from '../calc/evaluation';
import type { OutputsInputs } from '../calc/outputs/outputs-inputs';

/** What the outputs follow from, out of everything that follows from a plan. */
export function outputsOf(evaluation: Pick<Evaluation, 'surfaces' | 'zones' | 'runs' | 'nodes'>): OutputsInputs {
  const { surfaces, zones, runs, nodes } = evaluation;
  return { surfaces, zones: zones.results.zones, runs: runs.results, fed: nodes.results };
}
