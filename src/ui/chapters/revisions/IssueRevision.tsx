import { useState } from 'react';
import { namesOfEvaluation } from '../../../calc/names/names-of-evaluation';
import { nextRevisionName } from '../../../plan/next-revision-name';
import { counted } from '../../../units/counted';
import { selectRecomputing } from '../../state/selectors';
import { useActions, useBench } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { usePlan } from '../../state/use-plan';
import { Button } from '../../widgets/Button';
import { DateField } from '../../widgets/DateField';
import { TextField } from '../../widgets/TextField';
import { dayOf } from './day-of';

/** Gives the plan as it is now a name and a day, keeps it, and holds the names on its sheets. */
export function IssueRevision() {
  const plan = usePlan((all) => all);
  const evaluation = useEvaluation((all) => all);
  const isLate = useBench((state) => selectRecomputing(state) || state.preview !== null || state.follows);
  const { dispatch } = useActions();
  const [typedName, setName] = useState<string | null>(null);
  const [issuedOn, setIssuedOn] = useState(() => dayOf(new Date()));
  const [note, setNote] = useState('');
  const [refusal, setRefusal] = useState<string | null>(null);
  const name = typedName ?? nextRevisionName(plan);
  const stops = evaluation.checks.filter(({ severity }) => severity === 'stop').length;
  const ports = evaluation.runs.results.portsUsed;
  const circuits = evaluation.power.results.circuits.length;

  function issue(): void {
    const names = namesOfEvaluation(evaluation, plan.walls, plan.names);
    const done = dispatch({ name: 'issue-revision', args: { name, issuedOn, note, names } });
    setRefusal('refused' in done ? done.refused : null);
    if ('refused' in done) return;
    setName(null);
    setNote('');
  }

  return (
    <>
      <div className="fields">
        <TextField label="Name" value={name} most={20} onCommit={taking(setName)} />
        <DateField label="Issued on" value={issuedOn} onChange={setIssuedOn} />
        <TextField
          label="Note"
          value={note}
          most={4000}
          lines="many"
          placeholder="what it is for"
          onCommit={taking(setNote)}
        />
      </div>
      <p>
        Issuing keeps the plan as it is now and holds the names of {counted(ports, 'port')} and{' '}
        {counted(circuits, 'circuit')}: from then on they stay with their panels, whatever comes or goes beside them.
        {stops > 0 && ` ${counted(stops, 'check')} ${stops === 1 ? 'stops' : 'stop'} this plan.`}
      </p>
      <div className="table-actions">
        <Button look="primary" onClick={issue} disabled={isLate || issuedOn === ''}>
          Issue revision {name}
        </Button>
      </div>
      {refusal !== null && (
        <p className="field-refusal" role="alert">
          Not issued: {refusal}.
        </p>
      )}
    </>
  );
}

/** Takes whatever is typed: the command says what is wrong with it when it is issued. */
function taking(set: (value: string) => void): (value: string) => null {
  return (value) => {
    set(value);
    return null;
  };
}
