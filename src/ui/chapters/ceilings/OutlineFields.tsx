import type { Outline } from '../../../plan/ceiling';
import type { Path } from '../../../plan/commands/path';
import { AddButton, RemoveButton } from '../../bench/ListButtons';
import { PlanUnit } from '../../bench/PlanFields';

/** Sizes of an outline, or the corners of a polygon. */
export function OutlineFields({ path, outline }: { readonly path: Path; readonly outline: Outline }) {
  switch (outline.kind) {
    case 'rectangle':
      return (
        <>
          <PlanUnit path={[...path, 'widthMm']} label="Width" unit="mm" />
          <PlanUnit path={[...path, 'depthMm']} label="Depth" unit="mm" />
        </>
      );
    case 'circle':
      return <PlanUnit path={[...path, 'diameterMm']} label="Diameter" unit="mm" />;
    case 'polygon':
      return (
        <div className="corners">
          {cornersOf(outline.points.length).map(({ key, at }) => (
            <div key={key} className="corner">
              <PlanUnit path={[...path, 'points', at, 'xMm']} label={`Corner ${at + 1} across`} unit="mm" />
              <PlanUnit path={[...path, 'points', at, 'yMm']} label="along" unit="mm" />
              {outline.points.length > 3 && (
                <RemoveButton list={[...path, 'points']} index={at} label={`corner ${at + 1}`}>
                  Remove<span className="unseen"> corner {at + 1}</span>
                </RemoveButton>
              )}
            </div>
          ))}
          <AddButton
            list={[...path, 'points']}
            index={outline.points.length}
            value={betweenEnds(outline.points)}
            label="corner"
          >
            Add a corner
          </AddButton>
        </div>
      );
  }
}

/** Corners have no id of their own: their place is their name. */
function cornersOf(count: number): readonly { readonly key: string; readonly at: number }[] {
  return Array.from({ length: count }, (_, at) => ({ key: `corner ${at + 1}`, at }));
}

/** Where a new corner begins: in the middle of the side from the last corner to the first, in whole millimetres. */
function betweenEnds(points: Extract<Outline, { kind: 'polygon' }>['points']): { xMm: number; yMm: number } {
  const first = points[0]!;
  const last = points.at(-1)!;
  return { xMm: Math.round((first.xMm + last.xMm) / 2), yMm: Math.round((first.yMm + last.yMm) / 2) };
}
