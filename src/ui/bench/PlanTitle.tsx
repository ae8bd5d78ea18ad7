import { useState } from 'react';
import { usePlanField } from '../state/use-plan-field';
import { Button } from '../widgets/Button';
import { ChoiceField } from '../widgets/ChoiceField';
import { Dialog } from '../widgets/Dialog';
import { TextField } from '../widgets/TextField';

/** Name and revision of the plan; opens what is said of the plan as a whole. */
export function PlanTitle() {
  const [open, setOpen] = useState(false);
  const name = usePlanField<string>(['name'], 'name of the plan');
  const revision = usePlanField<string>(['revision'], 'revision');
  return (
    <>
      <button type="button" className="plan-title" title="Name, revision, units and note" onClick={() => setOpen(true)}>
        <b>{name.value || 'Plan without a name'}</b>
        {revision.value && <span>revision {revision.value}</span>}
      </button>
      <Dialog
        title="About this plan"
        isOpen={open}
        onClose={() => setOpen(false)}
        actions={
          <Button look="primary" onClick={() => setOpen(false)}>
            Done
          </Button>
        }
      >
        <AboutFields />
      </Dialog>
    </>
  );
}

function AboutFields() {
  const name = usePlanField<string>(['name'], 'name of the plan');
  const revision = usePlanField<string>(['revision'], 'revision');
  const note = usePlanField<string>(['note'], 'note');
  const lengths = usePlanField<'metric' | 'feet'>(['lengths'], 'lengths');
  const currency = usePlanField<string>(['currency'], 'currency');
  return (
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
  );
}
