import { freshId } from '../../../plan/fresh-id';
import type { Wall } from '../../../plan/wall';
import { AddButton } from '../../bench/ListButtons';
import { PlanChoice, PlanText, PlanUnit } from '../../bench/PlanFields';
import { useActions } from '../../state/use-bench';
import { usePlan } from '../../state/use-plan';
import { Button } from '../../widgets/Button';
import { BandFields } from './BandFields';
import { HoleFields } from './HoleFields';
import { SegmentFields } from './SegmentFields';

/** Everything that makes one wall. */
export function WallGiven({ wall, index }: { readonly wall: Wall; readonly index: number }) {
  const plan = usePlan((whole) => whole);
  const { dispatch } = useActions();
  const path = ['walls', index] as const;
  const last = wall.path.at(-1)!;
  const top = wall.bands.at(-1)!;
  return (
    <fieldset className="group">
      <legend>
        {wall.letter} {wall.name}
      </legend>
      <div className="fields">
        <PlanText path={[...path, 'name']} label="Name" />
        <PlanUnit path={[...path, 'baseMm']} label="Base height" unit="mm" />
        <PlanChoice
          path={[...path, 'support']}
          label="Held"
          choices={[
            { value: 'stands', label: 'stands on the floor' },
            { value: 'hangs', label: 'hangs' },
          ]}
        />
        <PlanUnit path={[...path, 'place', 'xMm']} label="Middle across" unit="mm" />
        <PlanUnit path={[...path, 'place', 'yMm']} label="Middle along" unit="mm" />
        <PlanUnit path={[...path, 'place', 'turnDeg']} label="Turned" unit="deg" />
      </div>
      <h3>Path, from the left as seen from inside</h3>
      {wall.path.map((segment, at) => (
        <SegmentFields key={segment.id} wallIndex={index} index={at} segment={segment} alone={wall.path.length === 1} />
      ))}
      <AddButton
        list={[...path, 'path']}
        index={wall.path.length}
        value={{ ...last, id: freshId(plan, 'segment'), columns: 4, mixed: null }}
        label="segment"
      >
        Add a segment
      </AddButton>
      <h3>Rows, from the floor up</h3>
      {wall.bands.map((band, at) => (
        <BandFields key={band.id} path={[...path, 'bands', at]} index={at} alone={wall.bands.length === 1} />
      ))}
      <AddButton
        list={[...path, 'bands']}
        index={wall.bands.length}
        value={{ ...top, id: freshId(plan, 'band'), rows: 1 }}
        label="band of rows"
      >
        Add a band of rows
      </AddButton>
      {wall.holes.length > 0 && <h3>Doors and windows</h3>}
      {wall.holes.map((hole, at) => (
        <HoleFields key={hole.id} path={[...path, 'holes', at]} index={at} name={hole.name} segments={wall.path} />
      ))}
      <div className="table-actions">
        <AddButton
          list={[...path, 'holes']}
          index={wall.holes.length}
          value={{
            id: freshId(plan, 'hole'),
            name: `Door ${wall.holes.length + 1}`,
            segmentId: wall.path[0]!.id,
            column: 1,
            row: 1,
            columns: 2,
            rows: 4,
          }}
          label="door"
        >
          Add a door or window
        </AddButton>
        <Button small onClick={() => dispatch({ name: 'mirror-wall', args: { wallId: wall.id } })}>
          Swap left and right
        </Button>
        <Button
          small
          onClick={() =>
            dispatch({
              name: 'keep-alternative',
              args: { id: freshId(plan, 'alternative'), name: `${wall.name} ${plan.alternatives.length + 1}`, wall },
            })
          }
        >
          Keep as an alternative
        </Button>
        <Button small onClick={() => dispatch({ name: 'remove-surface', args: { surfaceId: wall.id } })}>
          Remove {wall.letter}
        </Button>
      </div>
    </fieldset>
  );
}
