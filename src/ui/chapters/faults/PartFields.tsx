import { useMemo, useState } from 'react';
import type { Culprit, CulpritKind } from '../../../calc/faults/culprit';
import { culpritName } from '../../../calc/faults/culprit-words';
import { culpritsOf, type FaultModel } from '../../../calc/faults/fault-model';
import { findSelection } from '../../state/find-selection';
import { useActions } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { ChoiceField } from '../../widgets/ChoiceField';
import { TextField } from '../../widgets/TextField';
import { kindWords } from './kind-words';

export interface PartFieldsProps {
  readonly model: FaultModel;
  /** The part that is picked now. */
  readonly culprit: Culprit | null;
}

/** A longer list is not read but typed into. */
const listMost = 400;

/** Which part fails: its kind and which one, from a list or by its name. */
export function PartFields({ model, culprit }: PartFieldsProps) {
  const { seek } = useActions();
  const [chosen, setKind] = useState<CulpritKind>('processor');
  const kind = culprit?.kind ?? chosen;
  const names = useMemo(() => {
    const found: string[] = [];
    for (const one of culpritsOf(model, kind)) {
      found.push(culpritName(model, one));
      if (found.length > listMost) break;
    }
    return found;
  }, [model, kind]);
  const name = culprit ? culpritName(model, culprit) : '';
  const present = kindWords.filter(({ value }) => !culpritsOf(model, value).next().done);

  /** Another kind begins with its first part, so that there is something to see. */
  function chooseKind(next: CulpritKind): null {
    setKind(next);
    const first = culpritsOf(model, next).next();
    if (!first.done) seek(culpritName(model, first.value));
    return null;
  }

  return (
    <div className="fields">
      <ChoiceField label="What fails" value={kind} choices={present} onCommit={chooseKind} />
      {names.length <= listMost ? (
        <ChoiceField
          label="Which one"
          value={name}
          choices={[
            ...(culprit ? [] : [{ value: '', label: 'none picked' }]),
            ...names.map((each) => ({ value: each, label: each })),
          ]}
          onCommit={(value) => {
            if (value !== '') seek(value);
            return null;
          }}
          long
        />
      ) : (
        <NamedPart name={name} example={names[0] ?? ''} />
      )}
    </div>
  );
}

/** One of very many parts, by its name; anything else that has a name is taken as well. */
function NamedPart({ name, example }: { readonly name: string; readonly example: string }) {
  const evaluation = useEvaluation((all) => all);
  const { seek } = useActions();
  return (
    <TextField
      label="Which one"
      value={name}
      most={80}
      placeholder={example}
      hint="Its name, or a press on the drawing."
      onCommit={(text) => {
        if (!findSelection(evaluation, text)) return `Nothing is called ${text}.`;
        seek(text);
        return null;
      }}
    />
  );
}
