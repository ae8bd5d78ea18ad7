import { usePlanField } from '../state/use-plan-field';
import { Button } from '../widgets/Button';
import { ChoiceField } from '../widgets/ChoiceField';
import { Dialog } from '../widgets/Dialog';
import { TextField } from '../widgets/TextField';

/** What is said of the plan as a whole: name, revision, units, currency, note. */
export function AboutPlan({ isOpen, onClose }: { readonly isOpen: boolean; readonly onClose: () => void }) {
  const name = usePlanField<string>(['name'], 'name of the plan');
  const revision = usePlanField<string>(['revision'], 'revision');
  const note = usePlanField<string>(['note'], 'note');
  const lengths = usePlanField<'metric' | 'feet'>(['lengths'], 'lengths');
  const currency = usePlanField<string>(['currency'], 'currency');
  const done = (
    <Button look="primary" onClick={onClose}>
      Done
    </Button>
  );
  return (
    <Dialog title="About this plan" isOpen={isOpen} onClose={onClose} actions={done}>
      <div className="about-fields">
        <TextField label="Name" {...name} />
        <TextField label="Revision" most={20} {...revision} />
        <ChoiceField
          label="Lengths"
          {...lengths}
          choices={[
            { value: 'metric', label: 'metres' },
            { value: 'feet', label: 'feet and inches' },
          ]}
        />
        <TextField label="Currency" most={3} hint="three letters, such as EUR or USD" {...currency} />
        <TextField label="Note" most={4000} lines="many" {...note} />
      </div>
    </Dialog>
  );
}
