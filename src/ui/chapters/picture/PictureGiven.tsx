import type { Path } from '../../../plan/commands/path';
import { freshId } from '../../../plan/fresh-id';
import { modeWords } from '../../bench/mode-words';
import { PlanCount, PlanRate } from '../../bench/PlanFields';
import { useActions } from '../../state/use-bench';
import { usePlan } from '../../state/use-plan';
import { usePlanField } from '../../state/use-plan-field';
import { Button } from '../../widgets/Button';
import { ChoiceField } from '../../widgets/ChoiceField';
import { ServedSurfaces } from './ServedSurfaces';

const depths = ['8', '10', '12'] as const;

function DepthField({ path }: { readonly path: Path }) {
  const { value, field, onCommit } = usePlanField<number>(path, 'bit depth');
  return (
    <ChoiceField
      label="Bit depth"
      field={field}
      value={String(value) as (typeof depths)[number]}
      choices={depths.map((depth) => ({ value: depth, label: `${depth} bit` }))}
      onCommit={(depth) => onCommit(Number(depth))}
    />
  );
}

function ModeFields({ path }: { readonly path: Path }) {
  return (
    <div className="fields">
      <PlanRate path={[...path, 'rate']} label="Frame rate" />
      <DepthField path={[...path, 'depthBits']} />
      <PlanCount path={[...path, 'pictures']} label="Pictures a camera frame" least={1} />
    </div>
  );
}

/** What runs on the stage, where a surface differs, and what else must be served. */
export function PictureGiven() {
  const plan = usePlan((whole) => whole);
  const { dispatch } = useActions();
  const { picture } = plan;
  const surfaces = [...plan.walls, ...plan.ceilings];
  return (
    <>
      <ModeFields path={['picture', 'base']} />
      {picture.bySurface.map((entry, index) => (
        <fieldset className="group" key={entry.surfaceId}>
          <legend>{surfaces.find(({ id }) => id === entry.surfaceId)?.name ?? entry.surfaceId} differs</legend>
          <ModeFields path={['picture', 'bySurface', index, 'mode']} />
          <Button
            small
            onClick={() =>
              dispatch({ name: 'remove', args: { path: ['picture', 'bySurface'], index, label: 'rate of a surface' } })
            }
          >
            As the stage
          </Button>
        </fieldset>
      ))}
      {surfaces
        .filter(({ id }) => !picture.bySurface.some((entry) => entry.surfaceId === id))
        .map(({ id, letter, name }) => (
          <Button
            key={id}
            small
            onClick={() =>
              dispatch({
                name: 'insert',
                args: {
                  path: ['picture', 'bySurface'],
                  index: picture.bySurface.length,
                  value: { surfaceId: id, mode: picture.base },
                  label: `rate of ${letter}`,
                },
              })
            }
          >
            {letter} {name} at a rate of its own
          </Button>
        ))}
      {picture.alsoServe.map((entry, index) => (
        <fieldset className="group" key={entry.id}>
          <legend>Must also serve {modeWords(entry.mode)}</legend>
          <ModeFields path={['picture', 'alsoServe', index, 'mode']} />
          <ServedSurfaces path={['picture', 'alsoServe', index, 'surfaceIds']} />
          <Button
            small
            onClick={() =>
              dispatch({ name: 'remove', args: { path: ['picture', 'alsoServe'], index, label: 'also served rate' } })
            }
          >
            Need not be served
          </Button>
        </fieldset>
      ))}
      <Button
        small
        onClick={() =>
          dispatch({
            name: 'insert',
            args: {
              path: ['picture', 'alsoServe'],
              index: picture.alsoServe.length,
              value: { id: freshId(plan, 'serve'), mode: picture.base, surfaceIds: null },
              label: 'also served rate',
            },
          })
        }
      >
        Another rate that must be served
      </Button>
    </>
  );
}
