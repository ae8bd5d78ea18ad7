import type { LabelsAsked } from '../../../files/make-plan-file';
import type { Schedule } from '../../../sheets/schedule';
import { downloadBytes } from '../../bench/download-bytes';
import { useSay } from '../../bench/notice-context';
import { SearchProgress } from '../../bench/SearchProgress';
import { useOutputFile } from '../../bench/use-output-file';
import { useBench } from '../../state/use-bench';
import { Button } from '../../widgets/Button';

export interface SaveLabelsProps {
  readonly asked: Pick<LabelsAsked, 'kinds' | 'grid' | 'options'>;
  readonly schedule: Schedule;
  /** False where the sheet has no room for a label. */
  readonly canPrint: boolean;
}

/** Labels as sheets to print, and as a table for a label printer. */
export function SaveLabels({ asked, schedule, canPrint }: SaveLabelsProps) {
  const name = useBench((state) => state.plan.name);
  const say = useSay();
  const { ask, label, search } = useOutputFile();

  async function savePdf(): Promise<void> {
    try {
      const { loadPrintFonts } = await import('../../state/load-print-fonts');
      ask({ make: 'labels', ...asked, fonts: await loadPrintFonts() }, 'Writing the labels');
    } catch (error) {
      say(`The labels could not be written: ${error instanceof Error ? error.message : String(error)}`);
    }
  }

  async function saveCsv(): Promise<void> {
    const { scheduleToDataCsv } = await import('../../../files/schedule-to-data-csv');
    downloadBytes(scheduleToDataCsv(schedule), `${name} labels.csv`, 'text/csv');
  }

  return (
    <>
      <div className="table-actions">
        <Button look="primary" disabled={!canPrint} onClick={() => void savePdf()}>
          Save PDF
        </Button>
        <Button onClick={() => void saveCsv()}>Save CSV</Button>
      </div>
      {label !== null && <SearchProgress of={search} label={label} share={null} />}
    </>
  );
}
