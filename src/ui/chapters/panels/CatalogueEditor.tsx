import { useState } from 'react';
import type { CatalogueList } from '../../../plan/find-item';
import { freshId } from '../../../plan/fresh-id';
import { useSay } from '../../bench/notice-context';
import { useActions, useBench } from '../../state/use-bench';
import { usePlan } from '../../state/use-plan';
import { Button } from '../../widgets/Button';
import { ChoiceField } from '../../widgets/ChoiceField';
import { EmptyState } from '../../widgets/EmptyState';
import { GearFields } from './GearFields';
import { PanelFields } from './PanelFields';
import { ProcessorFields } from './ProcessorFields';
import { TakeAlong } from './TakeAlong';

/** One item of a list at a time: its sheet, a copy of it, or its end. */
export function CatalogueEditor({ list }: { readonly list: CatalogueList }) {
  const items = usePlan((plan) => plan.catalogue[list]) as readonly { readonly id: string; readonly name: string }[];
  const plan = useBench((state) => state.plan);
  const { dispatch } = useActions();
  const say = useSay();
  const [picked, setPicked] = useState<string | null>(null);
  const found = items.findIndex(({ id }) => id === picked);
  const index = Math.max(found, 0);
  const item = items[index];
  if (!item) {
    return (
      <>
        <EmptyState title="This list is empty.">Take items along from another plan.</EmptyState>
        <TakeAlong />
      </>
    );
  }
  const path = ['catalogue', list, index] as const;
  const copy = () => {
    const newId = freshId(plan, list.slice(0, -1));
    dispatch({ name: 'duplicate-item', args: { itemId: item.id, newId, name: `${item.name} copy` } });
    setPicked(newId);
  };
  const end = () => {
    const outcome = dispatch({ name: 'remove-item', args: { itemId: item.id } });
    if ('refused' in outcome) say(outcome.refused);
  };
  return (
    <>
      <ChoiceField
        label="Sheet of"
        long
        value={item.id}
        choices={items.map(({ id, name }) => ({ value: id, label: name }))}
        onCommit={(id) => {
          setPicked(id);
          return null;
        }}
      />
      {list === 'panels' && <PanelFields path={path} />}
      {list === 'processors' && <ProcessorFields path={path} />}
      {list !== 'panels' && list !== 'processors' && <GearFields list={list} path={path} />}
      <div className="table-actions">
        <Button small onClick={copy}>
          Copy {item.name}
        </Button>
        <Button small onClick={end}>
          Remove {item.name}
        </Button>
        <TakeAlong />
      </div>
    </>
  );
}
