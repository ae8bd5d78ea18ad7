import type { Path } from '../../../plan/commands/path';
import { RemoveButton } from '../../bench/ListButtons';
import { PlanCount, PlanItem } from '../../bench/PlanFields';
import { usePlan } from '../../state/use-plan';
import { usePlanField } from '../../state/use-plan-field';
import { ChoiceField } from '../../widgets/ChoiceField';

const turns = ['0', '90', '180', '270'] as const;

/** How panels are turned on a surface. */
export function TurnField({ path }: { readonly path: Path }) {
  const { value, field, onCommit } = usePlanField<number>(path, 'turn of the panels');
  return (
    <ChoiceField
      label="Turned"
      field={field}
      value={String(value) as (typeof turns)[number]}
      choices={turns.map((turn) => ({ value: turn, label: `${turn}°` }))}
      onCommit={(turn) => onCommit(Number(turn))}
    />
  );
}

interface BandFieldsProps {
  readonly path: Path;
  readonly index: number;
  readonly alone: boolean;
}

/** Rows of one panel type. */
export function BandFields({ path, index, alone }: BandFieldsProps) {
  const panels = usePlan((plan) => plan.catalogue.panels);
  return (
    <div className="row-group">
      <div className="fields">
        <PlanItem path={[...path, 'panelId']} label="Panel" items={panels} />
        <PlanCount path={[...path, 'rows']} label="Rows" least={1} />
        <TurnField path={[...path, 'turnDeg']} />
      </div>
      {!alone && (
        <RemoveButton list={path.slice(0, -1)} index={index} label="band of rows">
          Remove band {index + 1}
        </RemoveButton>
      )}
    </div>
  );
}
