import type { Path } from '../../../plan/commands/path';
import { freshId } from '../../../plan/fresh-id';
import { AddButton, RemoveButton } from '../../bench/ListButtons';
import { PlanText, PlanUnit } from '../../bench/PlanFields';
import { usePlan } from '../../state/use-plan';
import { usePlanField } from '../../state/use-plan-field';
import { ChoiceField } from '../../widgets/ChoiceField';
import { MillisecondsField } from './MillisecondsField';

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

const all = '';
const several = 'several';

/** The surface that a step is for, or all of them; several stay as the file has them. */
function StepSurfaces({ path }: { readonly path: Path }) {
  const walls = usePlan((plan) => plan.walls);
  const ceilings = usePlan((plan) => plan.ceilings);
  const { value: surfaceIds, field, onCommit } = usePlanField<readonly string[] | null>(path, 'surfaces of a step');
  const surfaces = [...walls, ...ceilings];
  if (surfaces.length < 2 && surfaceIds === null) return null;
  const isOne = surfaceIds !== null && surfaceIds.length === 1;
  return (
    <ChoiceField<string>
      label="On"
      field={field}
      value={surfaceIds === null ? all : isOne ? surfaceIds[0]! : several}
      choices={[
        { value: all, label: 'all surfaces' },
        ...surfaces.map(({ id, letter, name }) => ({ value: id, label: `${letter} ${name}` })),
        ...(surfaceIds === null || isOne ? [] : [{ value: several, label: `${surfaceIds.length} surfaces` }]),
      ]}
      onCommit={(id) => (id === several ? null : onCommit(id === all ? null : [id]))}
    />
  );
}
