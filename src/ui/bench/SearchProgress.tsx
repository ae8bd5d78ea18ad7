import type { Sweep } from '../state/use-sweep';
import { Button } from '../widgets/Button';
import { ProgressBar } from '../widgets/ProgressBar';

export interface SearchProgressProps {
  readonly of: Pick<Sweep<never>, 'isRunning' | 'wasStopped' | 'failure' | 'stop' | 'again'>;
  readonly label: string;
  /** Part done, 0 to 1; null where it cannot be told. */
  readonly share: number | null;
}

/** How far a search is, with a way to stop it; that it was stopped or could not be made, with a way to start it anew. */
export function SearchProgress({ of: search, label, share }: SearchProgressProps) {
  if (search.isRunning) return <ProgressBar label={label} share={share} onStop={search.stop} />;
  if (!search.wasStopped && search.failure === null) return null;
  return (
    <p className="search-rest" role="status">
      {search.failure === null ? 'Stopped before it was done.' : `The program could not search: ${search.failure}.`}{' '}
      <Button small onClick={search.again}>
        Start again
      </Button>
    </p>
  );
}
