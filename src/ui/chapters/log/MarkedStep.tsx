import { buildStep } from '../../../plan/build-log';
import { useActions, useBench } from '../../state/use-bench';
import { SegmentChoice } from '../../widgets/SegmentChoice';
import { stepWords } from './step-words';

const choices = [
  ...buildStep.options.map((value) => ({ value, label: stepWords[value] })),
  { value: 'none' as const, label: 'none' },
];

/** Which step the drawing marks: panels for which it is done are hatched. */
export function MarkedStep() {
  const step = useBench((state) => state.log.step);
  const { setLog } = useActions();
  return (
    <div className="marked-step">
      <span>Hatched on Unrolled</span>
      <SegmentChoice
        label="Step that the drawing marks"
        value={step ?? 'none'}
        choices={choices}
        onChoose={(value) => setLog({ step: value === 'none' ? null : value })}
      />
    </div>
  );
}
