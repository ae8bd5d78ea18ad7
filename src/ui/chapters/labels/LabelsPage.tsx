import { useMemo, useState } from 'react';
import { homeRunNote } from '../../../sheets/crew-set/home-run-note';
import type { LabelGrid } from '../../../sheets/labels/label-grid';
import { labelInputs } from '../../../sheets/labels/label-inputs';
import { type LabelledKind, labelledKinds } from '../../../sheets/labels/labelled-cable';
import { type LabelOptions, layOutLabels } from '../../../sheets/labels/lay-out-labels';
import { listLabelledCables } from '../../../sheets/labels/list-labelled-cables';
import { scheduleLabels } from '../../../sheets/labels/schedule-labels';
import { startingGrids } from '../../../sheets/labels/starting-grids';
import { ChapterPage } from '../../bench/ChapterPage';
import { PlanSchedule } from '../../bench/PlanSchedule';
import { useBench } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { addressCaution } from '../../storage/page-address';
import { useDesk, useDeskActions } from '../../storage/use-desk';
import { usePageAddress } from '../../storage/use-page-address';
import { CountField } from '../../widgets/CountField';
import { EmptyState } from '../../widgets/EmptyState';
import { FigureList } from '../../widgets/FigureList';
import { SwitchField } from '../../widgets/SwitchField';
import { TextField } from '../../widgets/TextField';
import { useFormat } from '../../widgets/use-format';
import { GridFields } from './GridFields';
import { gridWords } from './grid-words';
import { KindChoice } from './KindChoice';
import { LabelPreview } from './LabelPreview';
import { SaveLabels } from './SaveLabels';
import './labels.css';

/** The paper that goes with the plan's lengths, with labels that hold a code beside the text. */
function firstGrid(lengths: 'metric' | 'feet'): LabelGrid {
  const paper = lengths === 'feet' ? 'letter' : 'a4';
  return startingGrids.find((start) => start.paper === paper)!;
}

/** Labels for both ends of every cable: which, on what sheets, looked at and saved. */
export function LabelsPage() {
  const plan = useBench((state) => state.plan);
  const evaluation = useEvaluation((all) => all);
  const { address, setAddress } = usePageAddress();
  const remembered = useDesk((state) => state.memory.labelGrid);
  const { remember } = useDeskActions();
  const grid = remembered ?? firstGrid(plan.lengths);
  const [kinds, setKinds] = useState<ReadonlySet<LabelledKind>>(() => new Set(labelledKinds));
  const [asked, setAsked] = useState({ hasCodes: true, hasLines: false, used: 0 });
  const { hasCodes, hasLines, used } = asked;
  const format = useFormat();

  const inputs = useMemo(() => labelInputs(plan, evaluation), [plan, evaluation]);
  const cables = useMemo(() => listLabelledCables(inputs, kinds), [inputs, kinds]);
  const options = useMemo<LabelOptions>(
    () => ({ address: hasCodes ? address : null, planId: plan.id, used, hasLines }),
    [hasCodes, address, plan.id, used, hasLines],
  );
  const sheets = useMemo(() => layOutLabels(cables, grid, options), [cables, grid, options]);
  const schedule = useMemo(() => scheduleLabels(cables, options), [cables, options]);
  const set = (change: Partial<typeof asked>) => {
    setAsked({ ...asked, ...change });
    return null;
  };

  return (
    <ChapterPage
      page="labels"
      given={
        <div className="fields">
          <KindChoice kinds={kinds} onKinds={setKinds} />
          <GridFields grid={grid} onGrid={(labelGrid) => remember({ labelGrid })} />
          <CountField
            label="Labels gone from the first sheet"
            value={used}
            most={grid.rows * grid.columns - 1}
            onCommit={(count) => set({ used: count })}
          />
          <SwitchField label="Lines to cut by" value={hasLines} onCommit={(on) => set({ hasLines: on })} />
          <SwitchField label="Codes" value={hasCodes} onCommit={(on) => set({ hasCodes: on })} />
          {hasCodes && (
            <TextField
              label="Address of this page for others"
              value={address}
              most={400}
              onCommit={setAddress}
              hint={addressCaution(address) ?? undefined}
            />
          )}
        </div>
      }
      result={
        cables.length === 0 ? (
          <EmptyState title="No cable of these kinds is in the plan yet." />
        ) : (
          <>
            <FigureList
              figures={[
                { name: 'Labels', value: format(2 * cables.length, 'count') },
                { name: 'Sheets', value: sheets === null ? 'no room' : format(sheets.count, 'count') },
                { name: 'Sheet', value: gridWords(grid, (mm) => format(mm, 'mm')) },
              ]}
            />
            <SaveLabels asked={{ kinds: [...kinds], grid, options }} schedule={schedule} canPrint={sheets !== null} />
            <p className="quiet">{homeRunNote}</p>
            {sheets === null ? (
              <p role="status">Margins and gaps leave no room for labels on this sheet.</p>
            ) : (
              <>
                {hasCodes && !sheets.hasCodes && (
                  <p className="quiet">Codes have no room on labels of this size that a phone could read.</p>
                )}
                <LabelPreview sheets={sheets} />
              </>
            )}
          </>
        )
      }
      schedule={cables.length > 0 && <PlanSchedule schedule={schedule} />}
      scheduleNote="a row for each end"
    />
  );
}
