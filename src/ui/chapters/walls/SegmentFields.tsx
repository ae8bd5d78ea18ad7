import type { Segment } from '../../../plan/wall';
import { RemoveButton } from '../../bench/ListButtons';
import { PlanCount, PlanUnit } from '../../bench/PlanFields';
import { useActions } from '../../state/use-bench';
import { Button } from '../../widgets/Button';

interface SegmentFieldsProps {
  readonly wallIndex: number;
  readonly index: number;
  readonly segment: Segment;
  /** The only one: it cannot go. */
  readonly alone: boolean;
}

/** Columns with one joint angle, or two mixed evenly. */
export function SegmentFields({ wallIndex, index, segment, alone }: SegmentFieldsProps) {
  const { setField } = useActions();
  const list = ['walls', wallIndex, 'path'] as const;
  const path = [...list, index];
  return (
    <div className="row-group">
      <div className="fields">
        <PlanCount path={[...path, 'columns']} label="Columns" least={1} />
        <PlanUnit path={[...path, 'jointDeg']} label="Joint" unit="deg" />
        {index > 0 && <PlanUnit path={[...path, 'jointBeforeDeg']} label="Joint to the one before" unit="deg" />}
        {segment.mixed && <PlanUnit path={[...path, 'mixed', 'jointDeg']} label="Other joint" unit="deg" />}
        {segment.mixed && <PlanCount path={[...path, 'mixed', 'count']} label="How many of it" least={1} />}
      </div>
      <div className="table-actions">
        <Button
          small
          onClick={() =>
            setField(
              [...path, 'mixed'],
              segment.mixed ? null : { jointDeg: segment.jointDeg, count: 1 },
              'mixed joints',
            )
          }
        >
          {segment.mixed ? 'One joint throughout' : 'Mix two joints'}
        </Button>
        {!alone && (
          <RemoveButton list={list} index={index} label="segment">
            Remove segment {index + 1}
          </RemoveButton>
        )}
      </div>
    </div>
  );
}
