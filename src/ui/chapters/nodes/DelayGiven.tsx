import type { Path } from '../../../plan/commands/path';
import { freshId } from '../../../plan/fresh-id';
import { AddButton, RemoveButton } from '../../bench/ListButtons';
import { PlanText, PlanUnit } from '../../bench/PlanFields';
import { usePlan } from '../../state/use-plan';
import { usePlanField } from '../../state/use-plan-field';
import { MillisecondsField } from './MillisecondsField';
import { toggleSurface } from './toggle-surface';

const list = ['delay', 'steps'] as const;

/** The steps between a move of the camera and the lit panel, and what the shoot bears. */
export function DelayGiven() {
  const steps = usePlan((plan) => plan.delay.steps);
  const plan = usePlan((whole) => whole);
  const value = { id: freshId(plan, 'step'), name: `Step ${steps.length + 1}`, frames: 0, ms: 0, surfaceIds: null };
  return (
    <fieldset className="group">
      <legend>Delay from tracked camera to lit panel</legend>
      <div className="fields">
        <MillisecondsField path={['delay', 'mostMs']} label="The shoot bears" least={0} absent="not stated" />
      </div>
      {steps.map((step, index) => (
        <div className="delay-step" key={step.id}>
          <PlanText path={[...list, index, 'name']} label="Step" />
          <PlanUnit path={[...list, index, 'frames']} label="Frames" unit="count" least={0} />
          <MillisecondsField path={[...list, index, 'ms']} label="and besides" least={0} />
          <StepSurfaces path={[...list, index, 'surfaceIds']} />
          <RemoveButton list={list} index={index} label={`step ${step.name}`}>
            Remove<span className="unseen"> {step.name}</span>
          </RemoveButton>
        </div>
      ))}
      <AddButton list={list} index={steps.length} value={value} label="step of the delay">
        Another step
      </AddButton>
    </fieldset>
  );
}

/** The surfaces that a step is for: any of them, or all. */
function StepSurfaces({ path }: { readonly path: Path }) {
  const walls = usePlan((plan) => plan.walls);
  const ceilings = usePlan((plan) => plan.ceilings);
  const { value: surfaceIds, field, onCommit } = usePlanField<readonly string[] | null>(path, 'surfaces of a step');
  const surfaces = [...walls, ...ceilings];
  if (surfaces.length < 2 && surfaceIds === null) return null;
  const ids = surfaces.map(({ id }) => id);
  return (
    <fieldset className="step-surfaces" data-field={field}>
      <legend>{surfaceIds === null ? 'On all surfaces' : 'On'}</legend>
      {surfaces.map(({ id, letter, name }) => {
        const isMarked = surfaceIds?.includes(id) ?? true;
        return (
          <label key={id}>
            <input
              type="checkbox"
              checked={isMarked}
              disabled={isMarked && toggleSurface(surfaceIds, ids, id) === surfaceIds}
              onChange={() => onCommit(toggleSurface(surfaceIds, ids, id))}
            />
            {`${letter} ${name}`.trim()}
          </label>
        );
      })}
    </fieldset>
  );
}
