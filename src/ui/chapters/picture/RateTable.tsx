import { useEffect, useId, useMemo, useState } from 'react';
import { type RateCell, rowsOfRates, tableDepths } from '../../../calc/rates/rate-table';
import type { Plan } from '../../../plan/plan';
import { formatRate } from '../../../units/format-rate';
import { formatSentence } from '../../../units/format-sentence';
import { modeWords } from '../../bench/mode-words';
import { SearchProgress } from '../../bench/SearchProgress';
import { useActions, useBench } from '../../state/use-bench';
import { useSweep } from '../../state/use-sweep';
import { ChoiceField } from '../../widgets/ChoiceField';
import { useDisplayOptions } from '../../widgets/display-context';
import { groupStops } from './group-stops';
import { PreviewBar } from './PreviewBar';
import { RateButton } from './RateButton';

const all = '';
const keyOf = (rate: string, depthBits: number) => `${rate} ${depthBits}`;

/** Frame rate x depth: panels a port, ports, processors, fits or what stops it. A press previews a cell; Keep writes it, Escape drops it. */
export function RateTable() {
  const plan = useBench((state) => state.plan);
  const previewed = useBench(({ preview }) =>
    preview?.command.name === 'set-mode' ? preview.command.args.mode : null,
  );
  const { startPreview, endPreview } = useActions();
  const options = useDisplayOptions();
  const id = useId();
  const [surfaceId, setSurfaceId] = useState(all);
  const surfaces = [...plan.walls, ...plan.ceilings];
  const chosen = surfaces.some((surface) => surface.id === surfaceId) ? surfaceId : all;
  const asked = useMemo(() => (chosen === all ? null : [chosen]), [chosen]);
  const apart = chosen === all ? surfacesApart(plan) : [];
  const search = useSweep(plan, 'rates', asked);
  const rates = useMemo(() => rowsOfRates(plan).map(formatRate), [plan]);
  const cells = new Map(search.items.map((cell) => [keyOf(formatRate(cell.mode.rate), cell.mode.depthBits), cell]));
  const reasons = groupStops(search.items, (stop) => formatSentence(stop, options));

  useEffect(() => {
    const onKey = (event: KeyboardEvent) => event.key === 'Escape' && endPreview();
    window.addEventListener('keydown', onKey);
    return () => {
      window.removeEventListener('keydown', onKey);
      endPreview();
    };
  }, [endPreview]);

  function stopOf(cell: RateCell): { readonly describedBy?: string; readonly reason?: string } {
    const at = reasons.findIndex(({ cells: stopped }) => stopped.includes(cell));
    return at < 0 ? {} : { describedBy: `${id}-${at}`, reason: reasons[at]!.sentence };
  }

  return (
    <>
      <ChoiceField
        label="For"
        value={chosen}
        choices={[
          { value: all, label: 'the whole stage' },
          ...surfaces.map((surface) => ({ value: surface.id, label: `${surface.letter} ${surface.name}` })),
        ]}
        onCommit={(value) => {
          setSurfaceId(value);
          return null;
        }}
        long
      />
      <SearchProgress
        of={search}
        label="Working through the rates"
        share={search.isCurrent ? search.items.length / (rates.length * tableDepths.length) : 0}
      />
      <div className={search.isCurrent ? undefined : 'is-late'} aria-busy={!search.isCurrent}>
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
              {rates.map((rate) => (
                <tr key={rate}>
                  <th scope="row">{rate}</th>
                  {tableDepths.map((depth) => {
                    const cell = cells.get(keyOf(rate, depth));
                    return (
                      <td key={depth} className={cell?.current ? 'chosen' : undefined}>
                        {cell ? (
                          <RateButton
                            cell={cell}
                            {...stopOf(cell)}
                            isCurrent={search.isCurrent}
                            apart={apart}
                            isPreviewed={previewed !== null && modeWords(previewed) === modeWords(cell.mode)}
                            onPreview={() =>
                              startPreview({ name: 'set-mode', args: { surfaceIds: asked, mode: cell.mode } })
                            }
                          />
                        ) : (
                          <span className="rate-cell">…</span>
                        )}
                      </td>
                    );
                  })}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
        {reasons.length > 0 && (
          <ul className="stops" aria-label="What stands against it">
            {reasons.map(({ sentence, cells: stopped }, at) => (
              <li key={sentence} id={`${id}-${at}`}>
                <b>{stopped.map(({ mode }) => modeWords(mode)).join('; ')}:</b> {sentence}
              </li>
            ))}
          </ul>
        )}
      </div>
      <PreviewBar />
    </>
  );
}

/** Letters of the surfaces that run at a rate or depth of their own. */
function surfacesApart({ picture: { base, bySurface }, walls, ceilings }: Plan): readonly string[] {
  const differing = new Set(
    bySurface.filter(({ mode }) => modeWords(mode) !== modeWords(base)).map((entry) => entry.surfaceId),
  );
  return [...walls, ...ceilings].filter(({ id }) => differing.has(id)).map(({ letter }) => letter);
}
