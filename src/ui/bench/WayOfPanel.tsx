import { findSelection } from '../state/find-selection';
import { useActions, useBench } from '../state/use-bench';
import { useEvaluation } from '../state/use-evaluation';
import { Button } from '../widgets/Button';
import { useFormat } from '../widgets/use-format';
import { describeSelection } from './describe-selection';
import { traceWay, type WayStation } from './panel-way';

/** Below the drawing: what is picked, and for a panel its whole way from node to leg. */
export function WayOfPanel() {
  const evaluation = useEvaluation((all) => all);
  const selection = useBench((state) => state.selection);
  const actions = useActions();
  const format = useFormat();
  if (!selection) {
    return (
      <section className="trace" aria-label="Picked">
        <p className="quiet">Pick a panel in the drawing to see its way: node, processor, port, circuit and leg.</p>
      </section>
    );
  }
  const described = describeSelection(evaluation, selection, format);
  const way = selection.kind === 'panel' ? traceWay(evaluation, selection.index, format) : null;
  const pick = ({ picks }: WayStation) => {
    const found = picks && findSelection(evaluation, picks.name);
    if (found) actions.select(found);
  };
  return (
    <section className="trace" aria-label="Picked">
      <div className="trace-head">
        <h2>{way ? `Panel ${way.name}` : `${titles[selection.kind]} ${selection.name}`}</h2>
        <span className="quiet">{way ? way.type : described}</span>
        <Button small look="plain" onClick={() => actions.select(null)}>
          Let go
        </Button>
      </div>
      {way && (
        <ol className="chain">
          {way.stations.map((station) => (
            <li key={station.title}>
              {station.picks ? (
                <button type="button" onClick={() => pick(station)}>
                  <b>{station.title}</b>
                  <span>{station.detail}</span>
                </button>
              ) : (
                <div>
                  <b>{station.title}</b>
                  <span>{station.detail}</span>
                </div>
              )}
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}

const titles = { panel: 'Panel', zone: 'Zone of', run: 'Port', circuit: 'Circuit', column: 'Column' } as const;
