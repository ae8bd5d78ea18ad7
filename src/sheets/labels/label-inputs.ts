import type { Evaluation } from '../../calc/evaluation';
import { homeRunLengths } from '../../calc/runs/home-run-lengths';
import type { Plan } from '../../plan/plan';
import type { LabelInputs } from './list-labelled-cables';

type LabelPlan = Pick<Plan, 'lengths'> & {
  readonly catalogue: Pick<Plan['catalogue'], 'cables'>;
  readonly signal: Pick<Plan['signal'], 'ceilingEntry'>;
};

/** What labels read of a plan and its evaluation, and no more. */
export function labelInputs(
  { lengths, catalogue, signal }: LabelPlan,
  { surfaces, zones, runs, power }: Pick<Evaluation, 'surfaces' | 'zones' | 'runs' | 'power'>,
): LabelInputs {
  const { ceilingEntry } = signal;
  return {
    surfaces,
    runs: runs.results,
    power: power.results,
    cables: catalogue.cables,
    homeRuns: homeRunLengths(surfaces, zones.results.zones, runs.results, { ceilingEntry, lengths }),
    lengths,
  };
}
