import { useMemo } from 'react';
import { cautions } from '../../../calc/cautions';
import { scheduleMasses } from '../../../sheets/schedule-masses';
import { ChapterPage } from '../../bench/ChapterPage';
import { PlanCount, PlanUnit } from '../../bench/PlanFields';
import { PlanSchedule } from '../../bench/PlanSchedule';
import { useEvaluation } from '../../state/use-evaluation';
import { Caution } from '../../widgets/Caution';
import { FigureTable } from '../../widgets/FigureTable';
import { useFormat } from '../../widgets/use-format';

/** What columns and surfaces weigh, and what a standing wall puts on the floor. */
export function MassesPage() {
  const masses = useEvaluation((evaluation) => evaluation.masses.results);
  const surfaces = useEvaluation((evaluation) => evaluation.surfaces);
  const format = useFormat();
  const schedule = useMemo(() => scheduleMasses(surfaces, masses), [surfaces, masses]);
  return (
    <ChapterPage
      page="masses"
      given={
        <div className="fields">
          <PlanUnit path={['masses', 'fittingsKgPerM2']} label="Fittings, kg a square metre" unit="kg" />
          <PlanCount path={['masses', 'columnsAFrame']} label="Columns a support frame" least={1} />
          <PlanUnit path={['masses', 'plateAreaM2']} label="Plate under a frame" unit="m2" />
          <PlanUnit path={['masses', 'floorKpa']} label="Floor bears" unit="kPa" absent="not stated" />
        </div>
      }
      resultNote={`${format(masses.totalKg, 'kg')} in all`}
      result={
        <FigureTable
          caption="Mass by surface"
          columns={[
            { key: 'letter', title: 'Surface', cell: ({ letter }) => letter },
            { key: 'panels', title: 'Panels', cell: ({ panelsKg }) => format(panelsKg, 'kg') },
            { key: 'fittings', title: 'Fittings', cell: ({ fittingsKg }) => format(fittingsKg, 'kg') },
            { key: 'total', title: 'In all', cell: ({ totalKg }) => format(totalKg, 'kg') },
            { key: 'column', title: 'Heaviest column', cell: ({ heaviestColumnKg }) => format(heaviestColumnKg, 'kg') },
            { key: 'frame', title: 'On a frame', cell: ({ frameKg }) => format(frameKg, 'kg', 'hangs') },
            { key: 'floor', title: 'Under its plate', cell: ({ floorKpa }) => format(floorKpa, 'kPa', 'hangs') },
          ]}
          rows={masses.surfaces}
          keyOf={({ surfaceId }) => surfaceId}
        />
      }
      schedule={<PlanSchedule schedule={schedule} />}
      scheduleNote="column by column"
      caution={
        <Caution>
          {cautions.stackedLoad} {masses.surfaces.some(({ frameKg }) => frameKg === null) && cautions.hangingLoad}
        </Caution>
      }
    />
  );
}
