import { describeSelection } from '../../bench/describe-selection';
import { traceSelection, traceWay } from '../../bench/panel-way';
import { Stations } from '../../bench/Stations';
import { selectionTitle } from '../../bench/selection-title';
import type { Selection } from '../../state/selection';
import { useActions } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { useLog } from '../../state/use-log';
import { Button } from '../../widgets/Button';
import { useFormat } from '../../widgets/use-format';
import { DarkIfList } from './DarkIfList';
import { RunOrder } from './RunOrder';
import { TickPad } from './TickPad';
import { thingsInHand } from './things-in-hand';

export interface InHandProps {
  readonly selection: Selection;
  readonly onDrawing: () => void;
}

/** What is picked, for one hand: its way, its cable, what fails with it, and at the thumb its ticks. */
export function InHand({ selection, onDrawing }: InHandProps) {
  const evaluation = useEvaluation((all) => all);
  const state = useLog();
  const format = useFormat();
  const { seek, select } = useActions();
  const panel = selection.kind === 'panel' ? traceWay(evaluation, selection.index, format) : null;
  return (
    <>
      <div className="hand-scroll">
        <section aria-label="Picked">
          <div className="hand-head">
            <h2>{selectionTitle(selection)}</h2>
            <Button onClick={onDrawing}>On the drawing</Button>
            <Button onClick={() => select(null)}>Let go</Button>
          </div>
          <p className="quiet">{panel?.type ?? describeSelection(evaluation, selection, format)}</p>
        </section>
        <RunOrder selection={selection} />
        <section className="hand-part" aria-label="Way">
          <h3>Its way</h3>
          <Stations of={panel?.stations ?? traceSelection(evaluation, selection, format)} onPick={seek} />
        </section>
        <DarkIfList selection={selection} />
      </div>
      <TickPad things={thingsInHand(evaluation, state, selection)} />
    </>
  );
}
