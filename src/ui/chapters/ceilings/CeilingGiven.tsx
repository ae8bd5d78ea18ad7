import type { Ceiling, Outline } from '../../../plan/ceiling';
import { freshId } from '../../../plan/fresh-id';
import { AddButton, RemoveButton } from '../../bench/ListButtons';
import { PlanChoice, PlanItem, PlanSwitch, PlanText, PlanUnit } from '../../bench/PlanFields';
import { useActions } from '../../state/use-bench';
import { usePlan } from '../../state/use-plan';
import { Button } from '../../widgets/Button';
import { ChoiceField } from '../../widgets/ChoiceField';
import { OutlineFields } from './OutlineFields';

const begun: Readonly<Record<Outline['kind'], Outline>> = {
  rectangle: { kind: 'rectangle', widthMm: 6000, depthMm: 6000 },
  circle: { kind: 'circle', diameterMm: 6000 },
  polygon: {
    kind: 'polygon',
    points: [
      { xMm: -3000, yMm: -3000 },
      { xMm: 3000, yMm: -3000 },
      { xMm: 0, yMm: 3000 },
    ],
  },
};

/** Everything that makes one ceiling. */
export function CeilingGiven({ ceiling, index }: { readonly ceiling: Ceiling; readonly index: number }) {
  const panels = usePlan((plan) => plan.catalogue.panels);
  const plan = usePlan((whole) => whole);
  const { dispatch, setField } = useActions();
  const path = ['ceilings', index] as const;
  const setOutline = (kind: Outline['kind']) => {
    const outcome = setField([...path, 'outline'], begun[kind], 'outline');
    return 'refused' in outcome ? outcome.refused : null;
  };
  return (
    <fieldset className="group">
      <legend>
        {ceiling.letter} {ceiling.name}
      </legend>
      <div className="fields">
        <PlanText path={[...path, 'name']} label="Name" />
        <PlanItem path={[...path, 'panelId']} label="Panel" items={panels} />
        <ChoiceField
          label="Outline"
          value={ceiling.outline.kind}
          choices={[
            { value: 'rectangle', label: 'rectangle' },
            { value: 'circle', label: 'circle' },
            { value: 'polygon', label: 'polygon' },
          ]}
          onCommit={setOutline}
        />
        <OutlineFields path={[...path, 'outline']} outline={ceiling.outline} />
        <PlanChoice
          path={[...path, 'rule']}
          label="A panel stays with"
          choices={[
            { value: 'whole', label: 'all of it inside' },
            { value: 'centre', label: 'its centre inside' },
            { value: 'any', label: 'any part inside' },
          ]}
        />
        <PlanUnit path={[...path, 'place', 'xMm']} label="Origin across" unit="mm" />
        <PlanUnit path={[...path, 'place', 'yMm']} label="Origin along" unit="mm" />
        <PlanUnit path={[...path, 'place', 'turnDeg']} label="Turned" unit="deg" />
        <PlanSwitch path={[...path, 'place', 'centredAcross']} label="Panel on the origin, across" />
        <PlanSwitch path={[...path, 'place', 'centredAlong']} label="Panel on the origin, along" />
        <PlanUnit path={[...path, 'height', 'trimMm']} label="Trim" unit="mm" />
        <PlanUnit path={[...path, 'height', 'lowestMm']} label="Lowest" unit="mm" />
        <PlanUnit path={[...path, 'height', 'highestMm']} label="Highest" unit="mm" />
      </div>
      {ceiling.holes.map((hole, at) => (
        <div className="row-group" key={hole.id}>
          <div className="fields">
            <PlanText path={[...path, 'holes', at, 'name']} label="Hole" />
            <PlanUnit path={[...path, 'holes', at, 'xMm']} label="Across" unit="mm" />
            <PlanUnit path={[...path, 'holes', at, 'yMm']} label="Along" unit="mm" />
            <PlanUnit path={[...path, 'holes', at, 'widthMm']} label="Width" unit="mm" />
            <PlanUnit path={[...path, 'holes', at, 'depthMm']} label="Depth" unit="mm" />
          </div>
          <RemoveButton list={[...path, 'holes']} index={at} label={hole.name}>
            Remove {hole.name}
          </RemoveButton>
        </div>
      ))}
      <div className="table-actions">
        <AddButton
          list={[...path, 'holes']}
          index={ceiling.holes.length}
          value={{
            id: freshId(plan, 'hole'),
            name: `Hole ${ceiling.holes.length + 1}`,
            xMm: 0,
            yMm: 0,
            widthMm: 1000,
            depthMm: 1000,
          }}
          label="hole in the ceiling"
        >
          Add a hole
        </AddButton>
        <Button small onClick={() => dispatch({ name: 'remove-surface', args: { surfaceId: ceiling.id } })}>
          Remove {ceiling.letter}
        </Button>
      </div>
    </fieldset>
  );
}
