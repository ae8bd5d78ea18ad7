import { ChapterPage } from '../../bench/ChapterPage';
import type { FaultsState } from '../../state/bench-state';
import { culpritOfSelection } from '../../state/culprit-of-selection';
import { faultModelOf } from '../../state/fault-model-of';
import { useActions, useBench } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { Caution } from '../../widgets/Caution';
import { SegmentChoice } from '../../widgets/SegmentChoice';
import { DarkMarking } from './DarkMarking';
import { PartFields } from './PartFields';
import { PartLost } from './PartLost';
import { SuspectList } from './SuspectList';
import { WorstTable } from './WorstTable';
import './faults.css';

const questions: readonly { readonly value: FaultsState['asks']; readonly label: string }[] = [
  { value: 'lost', label: 'One part fails' },
  { value: 'cause', label: 'Panels are dark' },
];

/** What one failure takes along, and the reverse: what most likely failed where panels are dark. */
export function FaultsPage() {
  const evaluation = useEvaluation((all) => all);
  const asks = useBench((state) => state.faults.asks);
  const selection = useBench((state) => state.selection);
  const { setFaults } = useActions();
  const model = faultModelOf(evaluation);
  const culprit = selection && culpritOfSelection(evaluation, selection);
  return (
    <ChapterPage
      page="faults"
      given={
        <>
          <SegmentChoice
            label="Question"
            value={asks}
            choices={questions}
            onChoose={(value) => setFaults({ asks: value })}
          />
          {asks === 'lost' ? <PartFields model={model} culprit={culprit} /> : <DarkMarking />}
        </>
      }
      resultNote={asks === 'lost' ? 'drawn on every view' : 'the likeliest first'}
      result={asks === 'lost' ? <PartLost model={model} culprit={culprit} /> : <SuspectList model={model} />}
      schedule={<WorstTable />}
      scheduleNote="the ten worst single failures"
      caution={
        <Caution>
          Looking for a fault is work on a live stage: switch a circuit off before its plugs are touched, leave distros
          and supply to who is licensed for them, and nobody stands under what moves.
        </Caution>
      }
    />
  );
}
