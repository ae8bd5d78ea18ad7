import { lazy, Suspense, useState } from 'react';
import { useBench } from '../state/use-bench';

const AboutPlan = lazy(async () => ({ default: (await import('./AboutPlan')).AboutPlan }));

/** Name and revision of the plan; opens what is said of the plan as a whole. */
export function PlanTitle() {
  const name = useBench((state) => state.plan.name);
  const revision = useBench((state) => state.plan.revision);
  // Closed and opened, or never opened: its fields load with the first opening.
  const [open, setOpen] = useState<boolean | null>(null);
  return (
    <>
      <button type="button" className="plan-title" title="Name, revision, units and note" onClick={() => setOpen(true)}>
        <b>{name || 'Plan without a name'}</b>
        {revision && <span>revision {revision}</span>}
      </button>
      {open !== null && (
        <Suspense>
          <AboutPlan isOpen={open} onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </>
  );
}
