import { useState } from 'react';
import { type BadRow, readWiring } from '../../../calc/runs/existing/read-wiring';
import { scheduleWiring } from '../../../sheets/schedule-wiring';
import { ChapterSection } from '../../bench/ChapterPage';
import { downloadBytes } from '../../bench/download-bytes';
import { useActions } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { usePlan } from '../../state/use-plan';
import { Button } from '../../widgets/Button';
import { FigureList } from '../../widgets/FigureList';
import { useFormat } from '../../widgets/use-format';

const badShown = 20;

/** A wiring that exists already: read from a table of panel, port, place, and checked as it stands. */
export function ExistingWiring() {
  const existing = useEvaluation((evaluation) => evaluation.runs.results.existing);
  const runs = useEvaluation((evaluation) => evaluation.runs.results);
  const surfaces = useEvaluation((evaluation) => evaluation.surfaces);
  const name = usePlan((plan) => plan.name);
  const currency = usePlan((plan) => plan.currency);
  const { dispatch } = useActions();
  const format = useFormat();
  const [bad, setBad] = useState<readonly BadRow[]>([]);

  async function read(file: File | undefined): Promise<void> {
    if (!file) return;
    const wiring = readWiring(await file.text());
    setBad(wiring.bad);
    if (wiring.rows.length > 0)
      dispatch({
        name: 'set-existing-wiring',
        args: { wiring: { source: file.name.slice(0, 200), rows: [...wiring.rows] } },
      });
  }

  async function saveTemplate(): Promise<void> {
    const { scheduleToCsv } = await import('../../../files/schedule-to-csv');
    downloadBytes(scheduleToCsv(scheduleWiring({ surfaces, runs }), currency), `${name} wiring.csv`, 'text/csv');
  }

  return (
    <ChapterSection title="A wiring that exists" note="a table of panel, port, place">
      <label className="file-choice">
        Read a CSV file <input type="file" accept=".csv,text/csv" onChange={(event) => read(event.target.files?.[0])} />
      </label>
      {runs.runs.length > 0 && (
        <p className="lede">
          <Button small onClick={saveTemplate}>
            Save the present wiring as CSV
          </Button>{' '}
          to change it in a spreadsheet and read it back.
        </p>
      )}
      {bad.length > 0 && (
        <ul className="stops">
          {bad.slice(0, badShown).map(({ line, reason }) => (
            <li key={`${line} ${reason}`}>
              Line {line}: {reason}
            </li>
          ))}
          {bad.length > badShown && <li>and {bad.length - badShown} more</li>}
        </ul>
      )}
      {existing && (
        <>
          <FigureList
            figures={[
              { name: 'Read from', value: existing.source },
              { name: 'Ports', value: format(existing.ports, 'count') },
              {
                name: 'Panels a port',
                value: `${existing.panelsPerPortMin ?? 0} to ${existing.panelsPerPortMax ?? 0}`,
              },
              { name: 'Fullest port', value: format(existing.fullestShare, 'share') },
            ]}
          />
          <Button small onClick={() => dispatch({ name: 'set-existing-wiring', args: { wiring: null } })}>
            Forget this wiring
          </Button>
        </>
      )}
    </ChapterSection>
  );
}
