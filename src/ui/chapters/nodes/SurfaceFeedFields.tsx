import type { Path } from '../../../plan/commands/path';
import { OwnOfSurface } from '../../bench/OwnOfSurface';
import { PlanCount } from '../../bench/PlanFields';
import { useActions } from '../../state/use-bench';
import { usePlan } from '../../state/use-plan';
import { Button } from '../../widgets/Button';

/** How one surface is fed where it differs from the stage; or a way to give it that. */
export function SurfaceFeedFields({ surfaceId, name }: { readonly surfaceId: string; readonly name: string }) {
  const zonesANode = usePlan((plan) => plan.feed.zonesANode);
  return (
    <OwnOfSurface
      of="feed"
      surfaceId={surfaceId}
      name={name}
      what="feed"
      first={{ zonesANode, linkId: null, canvas: null }}
    >
      {(path) => (
        <>
          <PlanCount
            path={[...path, 'zonesANode']}
            label="Zones a node, at most"
            absent="all of it"
            least={1}
            most={10_000}
          />
          <CanvasFields path={[...path, 'canvas']} surfaceId={surfaceId} name={name} />
        </>
      )}
    </OwnOfSurface>
  );
}

interface CanvasFieldsProps {
  readonly path: Path;
  readonly surfaceId: string;
  readonly name: string;
}

/** The canvas stated for every node of a surface; without one it is as large as its zones. */
function CanvasFields({ path, surfaceId, name }: CanvasFieldsProps) {
  const { dispatch } = useActions();
  const isStated = usePlan(
    (plan) => (plan.feed.bySurface.find((entry) => entry.surfaceId === surfaceId)?.canvas ?? null) !== null,
  );
  const set = (value: unknown) =>
    dispatch({ name: 'set-fields', args: { fields: [{ path: [...path], value }], label: `canvas of ${name}` } });
  if (!isStated) {
    return (
      <Button small onClick={() => set({ width: 3840, height: 2160 })}>
        State its canvas
      </Button>
    );
  }
  return (
    <>
      <PlanCount path={[...path, 'width']} label="Canvas width, px" least={1} most={1_000_000} />
      <PlanCount path={[...path, 'height']} label="Canvas height, px" least={1} most={1_000_000} />
      <Button small onClick={() => set(null)}>
        As large as its zones
      </Button>
    </>
  );
}
