import { useMemo, useState } from 'react';
import { asIssued } from '../../../plan/as-issued';
import type { Revision } from '../../../plan/revision';
import { useActions } from '../../state/use-bench';
import { usePlan } from '../../state/use-plan';
import { Button } from '../../widgets/Button';

/** What was issued, the newest first, and whether the plan is still as one of them. */
export function RevisionList() {
  const plan = usePlan((all) => all);
  const { setCompared } = useActions();
  const [asked, setAsked] = useState<string | null>(null);
  const same = useMemo(() => asIssued(plan), [plan]);
  const newest = plan.revisions.at(-1);
  if (newest === undefined) return <p className="quiet">Nothing was issued yet.</p>;
  const standing = plan.revisions.filter(({ id }) => same.has(id)).at(-1);
  return (
    <>
      <p>
        {standing === undefined
          ? `The plan has changed since revision ${newest.name} was issued.`
          : `The plan is as issued in revision ${standing.name}.`}
      </p>
      <ul className="revisions" aria-label="Revisions issued">
        {plan.revisions.toReversed().map((revision) => (
          <li key={revision.id}>
            <p className="revision-head">
              <strong>Revision {revision.name}</strong>
              <time dateTime={revision.issuedOn}>{revision.issuedOn}</time>
              {same.has(revision.id) && <em>as the plan is now</em>}
            </p>
            {revision.note !== '' && <p className="plan-note">{revision.note}</p>}
            <div className="table-actions">
              <Button
                small
                onClick={() => setCompared({ from: revision.id, to: null })}
                disabled={same.has(revision.id)}
              >
                Compare {revision.name} with now
              </Button>
              <Button small onClick={() => setAsked(revision.id)} disabled={same.has(revision.id)}>
                Restore {revision.name} …
              </Button>
            </div>
            {asked === revision.id && <RestoreQuestion revision={revision} onClose={() => setAsked(null)} />}
          </li>
        ))}
      </ul>
    </>
  );
}

interface RestoreQuestionProps {
  readonly revision: Revision;
  readonly onClose: () => void;
}

/** Says what restoring does before it is done. */
function RestoreQuestion({ revision, onClose }: RestoreQuestionProps) {
  const { dispatch } = useActions();
  return (
    <fieldset className="restore" aria-label={`Restore revision ${revision.name}`}>
      <p>
        Puts the whole plan as it was in revision {revision.name} in place of the plan as it is now: shape, wiring,
        power, catalogue, wish and the names that it held. All revisions and the build log stay. Undo brings back what
        is there now.
      </p>
      <div className="table-actions">
        <Button
          small
          look="primary"
          onClick={() => {
            dispatch({ name: 'restore-revision', args: { id: revision.id } });
            onClose();
          }}
        >
          Restore revision {revision.name}
        </Button>
        <Button small onClick={onClose}>
          Leave the plan as it is
        </Button>
      </div>
    </fieldset>
  );
}
