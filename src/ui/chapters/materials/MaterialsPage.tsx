import { useMemo } from 'react';
import { scheduleMaterials } from '../../../sheets/schedule-materials';
import { ChapterPage } from '../../bench/ChapterPage';
import { downloadBytes } from '../../bench/download-bytes';
import { PlanCount, PlanUnit } from '../../bench/PlanFields';
import { useEvaluation } from '../../state/use-evaluation';
import { usePlan } from '../../state/use-plan';
import { Button } from '../../widgets/Button';
import { FigureList } from '../../widgets/FigureList';
import { useFormat } from '../../widgets/use-format';
import { BillTable } from './BillTable';
import { SpareRules } from './SpareRules';

/** The bill: every countable thing, needed, spare, owned and to get; as a table, a file and a print. */
export function MaterialsPage() {
  const materials = useEvaluation((evaluation) => evaluation.materials.results);
  const name = usePlan((plan) => plan.name);
  const currency = usePlan((plan) => plan.currency);
  const format = useFormat();
  const schedule = useMemo(() => scheduleMaterials(materials), [materials]);

  async function saveCsv(): Promise<void> {
    const { scheduleToCsv } = await import('../../../files/schedule-to-csv');
    downloadBytes(scheduleToCsv(schedule, currency), `${name} materials.csv`, 'text/csv');
  }
  async function saveSpreadsheet(): Promise<void> {
    const { schedulesToXlsx } = await import('../../../files/schedules-to-xlsx');
    const bytes = await schedulesToXlsx([schedule], currency);
    downloadBytes(bytes, `${name} materials.xlsx`, 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet');
  }

  return (
    <ChapterPage
      page="materials"
      given={
        <>
          <div className="fields">
            <PlanUnit path={['materials', 'spareShare']} label="Spares" unit="share" />
            <PlanCount path={['materials', 'spareLeast']} label="At least" />
          </div>
          <SpareRules lines={materials.lines} />
        </>
      }
      result={
        <FigureList
          figures={[
            { name: 'To get', value: format(materials.priceToGet, 'money') },
            { name: 'All of it, bought new', value: format(materials.priceTotal, 'money') },
            { name: 'Mass with spares', value: format(materials.massKg, 'kg') },
            { name: 'Lines without a price', value: format(materials.unpriced, 'count') },
          ]}
        />
      }
      schedule={
        <>
          <div className="table-actions">
            <Button small onClick={saveCsv}>
              Save as CSV
            </Button>
            <Button small onClick={saveSpreadsheet}>
              Save as spreadsheet
            </Button>
            <Button small onClick={() => window.print()}>
              Print the bill
            </Button>
          </div>
          <BillTable lines={materials.lines} />
        </>
      }
    />
  );
}
