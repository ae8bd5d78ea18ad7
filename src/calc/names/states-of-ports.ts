import type { Run, RunsResults } from '../runs/run-result';
import { type HeldStates, heldStates } from './held-states';
import type { LocatedChain } from './locate-names';

/** What became of the ports whose names are held, those that runs return to among them. */
export function statesOfPorts(
  held: readonly LocatedChain[],
  { runs, runOf }: Pick<RunsResults, 'runs' | 'runOf'>,
): HeldStates {
  const inForce = new Set(runs.flatMap(({ port, returnPort }) => (returnPort === null ? [port] : [port, returnPort])));
  const at = (of: (run: Run) => string | null) => (panel: number) => {
    const run = runs[runOf[panel]!];
    return run === undefined ? null : of(run);
  };
  const returns = held.flatMap((chain) => (chain.returnName === null ? [] : [{ ...chain, name: chain.returnName }]));
  const outs = heldStates(
    held,
    at(({ port }) => port),
    inForce,
  );
  const backs = heldStates(
    returns,
    at(({ returnPort }) => returnPort),
    inForce,
  );
  return {
    kept: [...outs.kept, ...backs.kept],
    renamed: [...outs.renamed, ...backs.renamed],
    reused: [...outs.reused, ...backs.reused],
    joined: [...outs.joined, ...backs.joined],
    resting: [...outs.resting, ...backs.resting],
  };
}
