import { wayKey } from '../../../calc/runs/way-key';
import { useHandWiring } from '../../bench/use-hand-wiring';
import { useActions, useBench } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { Button } from '../../widgets/Button';
import { SwitchField } from '../../widgets/SwitchField';
import { wayWords } from './way-words';

const bySearch = '';

/** Wiring by hand, about the picked panel: where its run begins, where it is cut or goes on, and the way of its zone. */
export function HandWiring() {
  const selection = useBench((state) => state.selection);
  const { runs, zones } = useEvaluation((evaluation) => evaluation.runs.results);
  const hand = useHandWiring();
  const { setDrawing } = useActions();
  const wires = useBench((state) => state.drawing.wires);
  const panel = selection?.kind === 'panel' ? selection : null;
  const run = panel === null ? undefined : runs[hand.runOf(panel.index)];
  const zone = run === undefined ? undefined : zones[run.zone];
  return (
    <section aria-label="Wire by hand">
      <h3>Wire by hand</h3>
      <div className="fields">
        <SwitchField
          label="A drag on Unrolled wires"
          value={wires}
          onCommit={(on) => {
            setDrawing({ wires: on });
            return null;
          }}
        />
      </div>
      {panel === null || run === undefined || zone === undefined ? (
        <p className="lede">
          Pick a panel in the drawing to change its run. With the switch on, a drag from one panel to the next joins two
          runs, or cuts one.
        </p>
      ) : (
        <div className="table-actions hand-wiring">
          <Button small disabled={hand.isLate} onClick={() => hand.begin(panel.index)}>
            Begin {run.port} at {panel.name}
          </Button>
          {hand.neighboursOf(panel.index).map(({ side, index, name, means }) => (
            <Button key={side} small disabled={hand.isLate} onClick={() => hand.step(panel.index, index)}>
              {means === 'cut' ? 'Cut before' : 'Join to'} {name}, {side}
            </Button>
          ))}
          <label className="by">
            Zone {run.zone + 1}
            <select
              value={zone.byHand ? wayKey(zone.way) : bySearch}
              disabled={hand.isLate}
              onChange={(event) =>
                hand.wireZone(run.zone, zone.ways.find((way) => wayKey(way) === event.target.value) ?? null)
              }
            >
              <option value={bySearch}>as the search chooses</option>
              {zone.ways.map((way) => (
                <option key={wayKey(way)} value={wayKey(way)}>
                  {wayWords(way)}
                </option>
              ))}
            </select>
          </label>
        </div>
      )}
    </section>
  );
}
