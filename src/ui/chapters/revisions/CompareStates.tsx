import { useMemo } from 'react';
import { SearchProgress } from '../../bench/SearchProgress';
import { useActions, useBench } from '../../state/use-bench';
import { usePlan } from '../../state/use-plan';
import { useSweep } from '../../state/use-sweep';
import { ChoiceField } from '../../widgets/ChoiceField';
import { SwitchField } from '../../widgets/SwitchField';
import { ChangesTable } from './ChangesTable';

const now = 'as it is now';

/** Any two states of the plan beside each other: what is otherwise, as a table and in the drawing. */
export function CompareStates() {
  const plan = usePlan((all) => all);
  const { from: chosenFrom, to: chosenTo, marks } = useBench((state) => state.compared);
  const { setCompared } = useActions();
  const { revisions } = plan;
  const from = revisions.find(({ id }) => id === chosenFrom) ?? revisions.at(-1)!;
  const to = revisions.find(({ id }) => id === chosenTo) ?? null;
  const asked = useMemo(() => ({ from: from.id, to: to?.id ?? null }), [from.id, to?.id]);
  const search = useSweep(plan, 'changes', asked);
  const choices = revisions.map(({ id, name }) => ({ value: `id ${id}`, label: `revision ${name}` }));
  const set = (key: 'from' | 'to') => (value: string) => {
    setCompared({ [key]: value === now ? null : value.slice(3) });
    return null;
  };
  return (
    <>
      <div className="fields">
        <ChoiceField label="From" value={`id ${from.id}`} choices={choices} onCommit={set('from')} />
        <ChoiceField
          label="To"
          value={to === null ? now : `id ${to.id}`}
          choices={[{ value: now, label: 'the plan as it is now' }, ...choices]}
          onCommit={set('to')}
        />
        <SwitchField
          label="Mark in the drawing what changed"
          value={marks}
          isDisabled={to !== null}
          onCommit={(value) => {
            setCompared({ marks: value });
            return null;
          }}
        />
      </div>
      <SearchProgress of={search} label="Comparing" share={null} />
      {search.answer !== null && (
        <div className={search.isCurrent ? undefined : 'is-late'} aria-busy={!search.isCurrent}>
          {search.answer.length === 0 ? (
            <p>Nothing a crew reads is otherwise.</p>
          ) : (
            <ChangesTable
              key={`${from.id} ${to?.id}`}
              changes={search.answer}
              currencies={{ before: from.content.currency, after: (to?.content ?? plan).currency }}
              title={`${plan.name} changes ${from.name} to ${to?.name ?? 'now'}`}
              leads={to === null}
            />
          )}
        </div>
      )}
    </>
  );
}
