import type { Path } from '../../plan/commands/path';
import type { Unit } from '../../units/unit';
import { usePlanField } from '../state/use-plan-field';
import { type Choice, ChoiceField } from '../widgets/ChoiceField';
import { CountField } from '../widgets/CountField';
import { RateField, type RateFieldProps } from '../widgets/RateField';
import { SwitchField } from '../widgets/SwitchField';
import { TextField } from '../widgets/TextField';
import { UnitField } from '../widgets/UnitField';

interface PlanFieldProps {
  readonly path: Path;
  readonly label: string;
  readonly hint?: string;
}

interface PlanFigureProps extends PlanFieldProps {
  readonly least?: number;
  readonly most?: number;
  /** Words for a figure nobody stated; left out: a figure must stand. */
  readonly absent?: string;
}

/** A figure of the plan with its unit. */
export function PlanUnit({ path, label, ...rest }: PlanFigureProps & { readonly unit: Unit; readonly plain?: string }) {
  const field = usePlanField<number | null>(path, label);
  return <UnitField<number | null> {...field} label={label} {...rest} />;
}

/** A count of the plan. */
export function PlanCount({ path, label, ...rest }: PlanFigureProps) {
  const field = usePlanField<number | null>(path, label);
  return <CountField<number | null> {...field} label={label} {...rest} />;
}

/** One of a few choices of the plan. */
export function PlanChoice<Value extends string>({
  path,
  label,
  ...rest
}: PlanFieldProps & { readonly choices: readonly Choice<Value>[]; readonly long?: boolean }) {
  const field = usePlanField<Value>(path, label);
  return <ChoiceField<Value> {...field} label={label} {...rest} />;
}

const none = '';

/** An item of the catalogue by its id, or none. */
export function PlanItem({
  path,
  label,
  items,
  absent = 'none',
}: PlanFieldProps & {
  readonly items: readonly { readonly id: string; readonly name: string }[];
  readonly absent?: string;
}) {
  const { value, field, onCommit } = usePlanField<string | null>(path, label);
  const choices = [{ value: none, label: absent }, ...items.map(({ id, name }) => ({ value: id, label: name }))];
  return (
    <ChoiceField<string>
      label={label}
      field={field}
      value={value ?? none}
      choices={choices}
      long
      onCommit={(id) => onCommit(id === none ? null : id)}
    />
  );
}

/** Yes or no in the plan. */
export function PlanSwitch({ path, label }: PlanFieldProps) {
  return <SwitchField {...usePlanField<boolean>(path, label)} label={label} />;
}

/** Words in the plan. */
export function PlanText({
  path,
  label,
  ...rest
}: PlanFieldProps & { readonly most?: number; readonly lines?: 'one' | 'many' }) {
  return <TextField {...usePlanField<string>(path, label)} label={label} {...rest} />;
}

/** A frame rate of the plan. */
export function PlanRate({ path, label }: PlanFieldProps) {
  return <RateField {...usePlanField<RateFieldProps['value']>(path, label)} label={label} />;
}
