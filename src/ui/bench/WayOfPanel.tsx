import { useActions, useBench } from '../state/use-bench';
import { useEvaluation } from '../state/use-evaluation';
import { Button } from '../widgets/Button';
import { useFormat } from '../widgets/use-format';
import { describeSelection } from './describe-selection';
import { traceSelection, traceWay } from './panel-way';
import { Stations } from './Stations';
import { selectionTitle } from './selection-title';
import { useCopyLink } from './use-copy-link';

/** Below the drawing: what is picked and its way, for a panel the whole of it from node to distro. */
export function WayOfPanel() {
  const evaluation = useEvaluation((all) => all);
  const selection = useBench((state) => state.selection);
  const actions = useActions();
  const format = useFormat();
  const copyLink = useCopyLink();
  // While presses mark panels the drawing must not move under them.
  const marks = useBench((state) => state.page === 'faults' && state.faults.asks === 'cause');
  if (!selection) {
    return (
      <section className="trace" aria-label="Picked">
        <p className="quiet">Pick a panel in the drawing to see its way: node, processor, port, circuit and leg.</p>
      </section>
    );
  }
  const panel = selection.kind === 'panel' ? traceWay(evaluation, selection.index, format) : null;
  return (
    <section className="trace" aria-label="Picked">
      <div className="trace-head">
        <h2>{selectionTitle(selection)}</h2>
        <span className="quiet">{panel?.type ?? describeSelection(evaluation, selection, format)}</span>
        {panel && (
          <Button small look="plain" onClick={copyLink}>
            Copy link
          </Button>
        )}
        <Button small look="plain" onClick={() => actions.select(null)}>
          Let go
        </Button>
      </div>
      {!marks && (
        <Stations of={panel?.stations ?? traceSelection(evaluation, selection, format)} onPick={actions.seek} />
      )}
    </section>
  );
}
