import type { NodesResults } from '../nodes/node-result';
import type { RunsResults } from '../runs/run-result';
import type { SurfaceSet } from '../surfaces/surface-table';
import type { Zone } from '../zones/zone-result';

/** What the outputs of a stage follow from, and no more. */
export interface OutputsInputs {
  readonly surfaces: SurfaceSet;
  readonly zones: readonly Zone[];
  readonly runs: RunsResults;
  readonly fed: Pick<NodesResults, 'nodes' | 'nodeOfZone'>;
}
