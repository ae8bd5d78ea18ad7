import { Fragment } from 'react';
import type { Outline } from '../../../plan/ceiling';
import type { Path } from '../../../plan/commands/path';
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
      return cornersOf(outline.points.length).map(({ key, at }) => (
        <Fragment key={key}>
          <PlanUnit path={[...path, 'points', at, 'xMm']} label={`Corner ${at + 1} across`} unit="mm" />
          <PlanUnit path={[...path, 'points', at, 'yMm']} label={`Corner ${at + 1} along`} unit="mm" />
        </Fragment>
      ));
  }
}

/** Corners have no id of their own: their place is their name. */
function cornersOf(count: number): readonly { readonly key: string; readonly at: number }[] {
  return Array.from({ length: count }, (_, at) => ({ key: `corner ${at + 1}`, at }));
}
