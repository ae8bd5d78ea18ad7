import { useMemo } from 'react';
import { countDark } from '../../../calc/faults/count-dark';
import type { Culprit } from '../../../calc/faults/culprit';
import { culpritName, lookFirst, whereIs } from '../../../calc/faults/culprit-words';
import { darkBy } from '../../../calc/faults/dark-by';
import type { FaultModel } from '../../../calc/faults/fault-model';
import { EmptyState } from '../../widgets/EmptyState';
import { type FigureColumn, FigureTable } from '../../widgets/FigureTable';
import { type Format, useFormat } from '../../widgets/use-format';

interface SurfaceRow {
  readonly name: string;
  readonly panels: number;
  readonly share: number;
  readonly panelsWithout: number;
  readonly shareWithout: number;
}

const columns = (format: Format): readonly FigureColumn<SurfaceRow>[] => [
  { key: 'surface', title: 'Dark', cell: ({ name }) => name },
  { key: 'panels', title: 'Panels', cell: ({ panels }) => format(panels, 'count') },
  { key: 'share', title: 'Share', cell: ({ share }) => format(share, 'share') },
  { key: 'without', title: 'Without returns', cell: ({ panelsWithout }) => format(panelsWithout, 'count') },
  { key: 'share-without', title: 'Share', cell: ({ shareWithout }) => format(shareWithout, 'share') },
];

export interface PartLostProps {
  readonly model: FaultModel;
  readonly culprit: Culprit | null;
}

/** What goes dark when the picked part fails: surface by surface, as planned and as if no run came back. */
export function PartLost({ model, culprit }: PartLostProps) {
  const format = useFormat();
  const rows = useMemo(() => (culprit ? surfaceRows(model, culprit) : []), [model, culprit]);
  if (!culprit) {
    return <EmptyState title="No part is picked.">Choose one above, or pick a panel in the drawing.</EmptyState>;
  }
  const [all] = rows;
  return (
    <>
      <p className="fault-head" role="status">
        <b>{culpritName(model, culprit)}</b> fails:{' '}
        {all?.panels === 0 ? 'nothing goes dark.' : `${all?.panels} panels go dark.`}{' '}
        <span className="quiet">{whereIs(model, culprit)}</span>
      </p>
      <FigureTable
        caption="What goes dark, as planned and without returns"
        columns={columns(format)}
        rows={rows}
        keyOf={({ name }) => name}
      />
      <p className="quiet">Look first: {lookFirst[culprit.kind]}</p>
    </>
  );
}

/** The stage, then every surface that is touched either way. */
function surfaceRows(model: FaultModel, culprit: Culprit): readonly SurfaceRow[] {
  const now = countDark(model.surfaces, darkBy(model, culprit));
  const without = countDark(model.surfaces, darkBy(model, culprit, false));
  const row = (name: string, one: Counted | undefined, other: Counted | undefined): SurfaceRow => ({
    name,
    panels: one?.panels ?? 0,
    share: one?.share ?? 0,
    panelsWithout: other?.panels ?? 0,
    shareWithout: other?.share ?? 0,
  });
  const bySurface = model.surfaces.surfaces.flatMap(({ surfaceId, letter, name }) => {
    const one = now.surfaces.find((each) => each.surfaceId === surfaceId);
    const other = without.surfaces.find((each) => each.surfaceId === surfaceId);
    return one || other ? [row(`${letter} ${name}`, one, other)] : [];
  });
  return [row('The stage', now, without), ...bySurface];
}

interface Counted {
  readonly panels: number;
  readonly share: number;
}
