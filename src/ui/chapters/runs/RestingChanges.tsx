import type { HandChange } from '../../../plan/hand-change';
import { useSay } from '../../bench/notice-context';
import { useActions } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { usePlan } from '../../state/use-plan';
import { Button } from '../../widgets/Button';

const kindWords: Readonly<Record<HandChange['kind'], string>> = {
  way: 'Way of wiring',
  entry: 'Entry',
  cut: 'Cut',
  join: 'Join',
};

/** Changes by hand that have no place in the plan as it is: why, and a button that takes one out for good. */
export function RestingChanges() {
  const resting = useEvaluation((evaluation) => evaluation.runs.results.resting);
  const changes = usePlan((plan) => plan.handChanges);
  const surfaces = useEvaluation((evaluation) => evaluation.surfaces.surfaces);
  const { dispatch } = useActions();
  const say = useSay();
  if (resting.length === 0) return null;

  function words(id: string): string {
    const change = changes.find((one) => one.id === id);
    if (!change) return id;
    const { surfaceId, column, row } = 'at' in change ? change.at : change.from;
    const letter = surfaces.find((surface) => surface.surfaceId === surfaceId)?.letter;
    const on = letter === undefined ? '' : ` on ${letter}`;
    return `${kindWords[change.kind]}${on}, column ${column} of its part, row ${row}`;
  }

  function clear(ids: readonly string[]): void {
    const outcome = dispatch({ name: 'clear-hand-change', args: { ids } });
    if ('refused' in outcome) say(outcome.refused);
  }

  return (
    <>
      <h3>Changes by hand at rest</h3>
      <p className="lede">They stay in the file and return when they apply again.</p>
      <ul className="resting">
        {resting.map(({ id, reason }) => (
          <li key={id}>
            <span>
              {words(id)}: {reason}.
            </span>
            <Button small aria-label={`Take out: ${words(id)}`} onClick={() => clear([id])}>
              Take out
            </Button>
          </li>
        ))}
      </ul>
      {resting.length > 1 && (
        <Button small onClick={() => clear(resting.map(({ id }) => id))}>
          Take out all {resting.length}
        </Button>
      )}
    </>
  );
}
