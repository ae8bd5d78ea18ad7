import type { Evaluation } from '../../calc/evaluation';
import { type FaultModel, makeFaultModel } from '../../calc/faults/fault-model';

/** What of an evaluation says how its wiring hangs together. */
export type Wired = Pick<Evaluation, 'surfaces' | 'zones' | 'runs' | 'nodes' | 'power' | 'faults'>;

const known = new WeakMap<Wired, FaultModel>();

/** The model of faults of an evaluation, made when it is first asked for. */
export function faultModelOf(evaluation: Wired): FaultModel {
  const before = known.get(evaluation);
  if (before) return before;
  const { surfaces, zones, runs, nodes, power, faults } = evaluation;
  const model = makeFaultModel({
    surfaces,
    zones: zones.results.zones,
    runs: runs.results,
    nodes: nodes.results,
    power: power.results,
    passes: faults.results.passes,
  });
  known.set(evaluation, model);
  return model;
}
