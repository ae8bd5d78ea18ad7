import type { Path } from '../../../plan/commands/path';
import type { Segment } from '../../../plan/wall';
import { PlanChoice, PlanCount, PlanText } from '../../bench/PlanFields';
import { useActions } from '../../state/use-bench';
import { Button } from '../../widgets/Button';

interface HoleFieldsProps {
  readonly path: Path;
  readonly index: number;
  readonly name: string;
  readonly segments: readonly Segment[];
}

/** A rectangle of panels left out. */
export function HoleFields({ path, index, name, segments }: HoleFieldsProps) {
  const { dispatch } = useActions();
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
      <Button small onClick={() => dispatch({ name: 'remove', args: { path: path.slice(0, -1), index, label: name } })}>
        Remove {name}
      </Button>
    </div>
  );
}
