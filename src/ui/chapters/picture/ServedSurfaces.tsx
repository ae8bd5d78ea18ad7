import type { Path } from '../../../plan/commands/path';
import { usePlan } from '../../state/use-plan';
import { usePlanField } from '../../state/use-plan-field';
import { SwitchField } from '../../widgets/SwitchField';
import { serveOn } from './serve-on';

/** The surfaces that a rate must be served on, each taken in or left out; nothing to choose with one surface. */
export function ServedSurfaces({ path }: { readonly path: Path }) {
  const walls = usePlan((plan) => plan.walls);
  const ceilings = usePlan((plan) => plan.ceilings);
  const { value: surfaceIds, onCommit } = usePlanField<readonly string[] | null>(path, 'surfaces to serve');
  const surfaces = [...walls, ...ceilings];
  const all = surfaces.map(({ id }) => id);
  const isServed = (id: string) => surfaceIds === null || surfaceIds.includes(id);
  const served = all.filter(isServed);
  if (all.length < 2 && surfaceIds === null) return null;
  return (
    <div className="fields">
      {surfaces.map(({ id, letter, name }) => (
        <SwitchField
          key={id}
          label={`On ${letter} ${name}`}
          value={isServed(id)}
          isDisabled={served.length === 1 && isServed(id)}
          onCommit={(on) => onCommit(serveOn(surfaceIds, all, id, on))}
        />
      ))}
    </div>
  );
}
