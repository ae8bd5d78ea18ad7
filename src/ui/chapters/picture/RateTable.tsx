import { useEffect, useMemo, useState } from 'react';
import { createEvaluator } from '../../../calc/evaluate';
import { type RateCell, rateTable, tableDepths } from '../../../calc/rates/rate-table';
import { formatRate } from '../../../units/format-rate';
import { modeWords } from '../../bench/mode-words';
import { useActions, useBench } from '../../state/use-bench';
import { useSweep } from '../../state/use-sweep';
import { Button } from '../../widgets/Button';
import { ChoiceField } from '../../widgets/ChoiceField';
import { ProgressBar } from '../../widgets/ProgressBar';
import { StatusGlyph } from '../../widgets/StatusGlyph';

const all = '';

/** Frame rate x depth: panels a port, ports, processors, fits or not. A press previews a cell; Keep writes it, Escape drops it. */
export function RateTable() {
  const plan = useBench((state) => state.plan);
  const preview = useBench((state) => state.preview);
  const { startPreview, keepPreview, endPreview } = useActions();
  const [surfaceId, setSurfaceId] = useState(all);
  const sweep = useSweep<RateCell, void>();
  const { start, stop } = sweep;
  const evaluator = useMemo(() => createEvaluator(), []);
  const surfaces = [...plan.walls, ...plan.ceilings];
  const asked = surfaces.some(({ id }) => id === surfaceId) ? surfaceId : all;

  useEffect(() => {
    start(() => rateTable(plan, asked === all ? null : [asked], evaluator.evaluate));
    return stop;
  }, [plan, asked, evaluator, start, stop]);

  useEffect(() => {
    const onKey = (event: KeyboardEvent) => event.key === 'Escape' && endPreview();
    window.addEventListener('keydown', onKey);
    return () => {
      window.removeEventListener('keydown', onKey);
      endPreview();
    };
  }, [endPreview]);

  const rows: RateCell[][] = [];
  for (let i = 0; i < sweep.items.length; i += tableDepths.length)
    rows.push(sweep.items.slice(i, i + tableDepths.length));
  const total = Math.max(1, rows.length) * tableDepths.length;
  return (
    <>
      <ChoiceField
        label="For"
        value={asked}
        choices={[
          { value: all, label: 'the whole stage' },
          ...surfaces.map(({ id, letter, name }) => ({ value: id, label: `${letter} ${name}` })),
        ]}
        onCommit={(value) => {
          setSurfaceId(value);
          return null;
        }}
        long
      />
      {sweep.running && (
        <ProgressBar
          label="Working through the rates"
          share={Math.min(1, sweep.items.length / Math.max(total, 24))}
          onStop={sweep.stop}
        />
      )}
      {preview && (
        <div className="preview-bar" role="status">
          <span>Previewing {preview.label}; the plan is untouched.</span>
          <Button small look="primary" onClick={keepPreview}>
            Keep
          </Button>
          <Button small onClick={endPreview}>
            Drop
          </Button>
        </div>
      )}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls sideways must be reached by keyboard. */}
      <section className="table-box" aria-label="Frame rate and depth" tabIndex={0}>
        <table className="figures rates">
          <caption className="unseen">Panels a port, ports and processors at each frame rate and depth</caption>
          <thead>
            <tr>
              <th scope="col">fps</th>
              {tableDepths.map((depth) => (
                <th key={depth} scope="col">
                  {depth} bit
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((cells) => (
              <tr key={formatRate(cells[0]!.mode.rate)}>
                <th scope="row">{formatRate(cells[0]!.mode.rate)}</th>
                {cells.map((cell) => (
                  <td key={cell.mode.depthBits} className={cell.current ? 'chosen' : undefined}>
                    <button
                      type="button"
                      className="rate-cell"
                      title={cell.stop ? cell.stop.id : 'fits'}
                      aria-label={`${modeWords(cell.mode)}: ${cell.panelsAPort ?? 0} panels a port, ${cell.ports} ports, ${cell.processors} processors, ${cell.stop ? 'does not fit' : 'fits'}`}
                      onClick={() =>
                        startPreview({
                          name: 'set-mode',
                          args: { surfaceIds: asked === all ? null : [asked], mode: cell.mode },
                        })
                      }
                    >
                      <StatusGlyph status={cell.stop ? 'stop' : 'pass'} />
                      <span>{cell.panelsAPort ?? 0} a port</span>
                      <span className="quiet">
                        {cell.ports} ports, {cell.processors} proc.
                      </span>
                    </button>
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  );
}
