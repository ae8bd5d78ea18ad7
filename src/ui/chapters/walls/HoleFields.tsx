import type { Path } from '../../../plan/commands/path';
import type { Segment } from '../../../plan/wall';
import { RemoveButton } from '../../bench/ListButtons';
import { PlanChoice, PlanCount, PlanText } from '../../bench/PlanFields';

interface HoleFieldsProps {
  readonly path: Path;
  readonly index: number;
  readonly name: string;
  readonly segments: readonly Segment[];
}

/** A rectangle of panels left out. */
export function HoleFields({ path, index, name, segments }: HoleFieldsProps) {
  return (
    <div className="row-group">
      <div className="fields">
        <PlanText path={[...path, 'name']} label="Name" />
        <PlanChoice
          path={[...path, 'segmentId']}
          label="In segment"
          choices={segments.map(({ id }, at) => ({ value: id, label: `${at + 1}` }))}
        />
        <PlanCount path={[...path, 'column']} label="From its column" least={1} />
        <PlanCount path={[...path, 'row']} label="From row" least={1} />
        <PlanCount path={[...path, 'columns']} label="Columns" least={1} />
        <PlanCount path={[...path, 'rows']} label="Rows" least={1} />
      </div>
      <RemoveButton list={path.slice(0, -1)} index={index} label={name}>
        Remove {name}
      </RemoveButton>
    </div>
  );
}
