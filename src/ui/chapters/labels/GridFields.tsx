import type { LabelGrid } from '../../../sheets/labels/label-grid';
import { startingGrids } from '../../../sheets/labels/starting-grids';
import { type PaperId, papers } from '../../../sheets/pages/papers';
import { mostLabelsAlong } from '../../storage/read-label-grid';
import { ChoiceField } from '../../widgets/ChoiceField';
import { CountField } from '../../widgets/CountField';
import { UnitField } from '../../widgets/UnitField';
import { useFormat } from '../../widgets/use-format';
import { gridWords, startingPlace } from './grid-words';

const counts = [
  ['columns', 'Columns'],
  ['rows', 'Rows'],
] as const;
const lengths = [
  ['leftMm', 'Margin left'],
  ['rightMm', 'Margin right'],
  ['topMm', 'Margin at the top'],
  ['bottomMm', 'Margin at the foot'],
  ['acrossMm', 'Between columns'],
  ['downMm', 'Between rows'],
] as const;
const typed = 'typed';

export interface GridFieldsProps {
  readonly grid: LabelGrid;
  readonly onGrid: (grid: LabelGrid) => void;
}

/** How labels lie on the sheet: a common grid to begin with, then what is measured on the sheet at hand. */
export function GridFields({ grid, onGrid }: GridFieldsProps) {
  const format = useFormat();
  const place = startingPlace(grid);
  const set = (change: Partial<LabelGrid>) => {
    onGrid({ ...grid, ...change });
    return null;
  };
  return (
    <>
      <ChoiceField
        label="Begin with"
        long
        value={place < 0 ? typed : String(place)}
        choices={[
          ...startingGrids.map((start, i) => ({
            value: String(i),
            label: gridWords(start, (mm) => format(mm, 'mm')),
          })),
          ...(place < 0 ? [{ value: typed, label: 'as typed below' }] : []),
        ]}
        onCommit={(value) => set(startingGrids[Number(value)] ?? {})}
      />
      <ChoiceField
        label="Paper"
        value={grid.paper}
        choices={papers.map(({ id, name }) => ({ value: id, label: name }))}
        onCommit={(paper: PaperId) => set({ paper })}
      />
      {counts.map(([key, label]) => (
        <CountField
          key={key}
          label={label}
          value={grid[key]}
          least={1}
          most={mostLabelsAlong}
          onCommit={(count) => set({ [key]: count })}
        />
      ))}
      {lengths.map(([key, label]) => (
        <UnitField
          key={key}
          label={label}
          unit="mm"
          plain="mm"
          value={grid[key]}
          least={0}
          most={500}
          step={0.5}
          onCommit={(mm) => set({ [key]: mm })}
        />
      ))}
    </>
  );
}
