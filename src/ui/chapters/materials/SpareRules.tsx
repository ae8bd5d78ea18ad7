import type { MaterialLine } from '../../../calc/materials/material-result';
import { RemoveButton } from '../../bench/ListButtons';
import { useSay } from '../../bench/notice-context';
import { PlanCount, PlanUnit } from '../../bench/PlanFields';
import { useActions } from '../../state/use-bench';
import { usePlan } from '../../state/use-plan';
import { ChoiceField } from '../../widgets/ChoiceField';

interface BillLines {
  readonly lines: readonly MaterialLine[];
}

const path = ['materials', 'byItem'] as const;
const noneYet = '';

/** Items that want more or fewer spares than the rest, each with a share and a least number of its own. */
export function SpareRules({ lines }: BillLines) {
  const rules = usePlan((plan) => plan.materials.byItem);
  const nameOf = (itemId: string) => lines.find((line) => line.itemId === itemId)?.name ?? itemId;
  return (
    <>
      {rules.map(({ itemId }, index) => (
        <div className="fields" key={itemId}>
          <PlanUnit path={[...path, index, 'share']} label={`Spares of ${nameOf(itemId)}`} unit="share" />
          <PlanCount path={[...path, index, 'least']} label="At least" />
          <RemoveButton list={path} index={index} label={`spares of ${nameOf(itemId)}`}>
            Spare {nameOf(itemId)} as the rest
          </RemoveButton>
        </div>
      ))}
      <div className="fields">
        <OwnRule lines={lines} />
      </div>
    </>
  );
}

/** Gives one more item of the bill a rule of its own, which begins as the general one. */
function OwnRule({ lines }: BillLines) {
  const { spareShare, spareLeast, byItem } = usePlan((plan) => plan.materials);
  const { dispatch } = useActions();
  const say = useSay();
  const ruled = new Set(byItem.map(({ itemId }) => itemId));
  const free = lines.filter(({ group, itemId }) => group !== 'cases' && !ruled.has(itemId));
  if (free.length === 0) return null;
  const add = (itemId: string): null => {
    if (itemId === noneYet) return null;
    const value = { itemId, share: spareShare, least: spareLeast };
    const label = `spares of ${free.find((line) => line.itemId === itemId)?.name ?? itemId}`;
    const outcome = dispatch({ name: 'insert', args: { path: [...path], index: byItem.length, value, label } });
    if ('refused' in outcome) say(outcome.refused);
    return null;
  };
  return (
    <ChoiceField<string>
      label="Spares of one item apart"
      value={noneYet}
      choices={[
        { value: noneYet, label: 'choose an item' },
        ...free.map(({ itemId, name }) => ({ value: itemId, label: name })),
      ]}
      long
      onCommit={add}
    />
  );
}
