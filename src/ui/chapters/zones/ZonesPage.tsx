import { useMemo } from 'react';
import type { ZoneWidth } from '../../../calc/zones/zone-result';
import { scheduleZones } from '../../../sheets/schedule-zones';
import { counted } from '../../../units/counted';
import { ChapterPage } from '../../bench/ChapterPage';
import { PlanItem } from '../../bench/PlanFields';
import { PlanSchedule } from '../../bench/PlanSchedule';
import { useEvaluation } from '../../state/use-evaluation';
import { usePlan } from '../../state/use-plan';
import { EmptyState } from '../../widgets/EmptyState';
import { type FigureColumn, FigureTable } from '../../widgets/FigureTable';
import { type Format, useFormat } from '../../widgets/use-format';
import { SurfaceZonesFields } from './SurfaceZonesFields';

const widthColumns = (format: Format): readonly FigureColumn<ZoneWidth>[] => [
  {
    key: 'columns',
    title: 'Columns a zone',
    cell: ({ columns, up }) => (up > 1 ? `${columns}, ${up} up` : `${columns}`),
  },
  { key: 'processors', title: 'Processors', cell: ({ processors }) => processors },
  { key: 'canvas', title: 'Canvas, px', cell: ({ canvasWidth, canvasHeight }) => `${canvasWidth} × ${canvasHeight}` },
  { key: 'used', title: 'Used', cell: ({ usedShare }) => format(usedShare, 'share') },
  { key: 'blank', title: 'Blank columns', cell: ({ blankColumns }) => blankColumns },
  {
    key: 'ports',
    title: 'Ports a zone',
    cell: ({ portsAZone, portsExact }) => `${portsExact ? '' : 'at least '}${portsAZone}`,
  },
];

/** Which processor drives which rectangle, and every width that would work. */
export function ZonesPage() {
  const processors = usePlan((plan) => plan.catalogue.processors);
  const surfaces = useEvaluation((evaluation) => evaluation.surfaces);
  const zones = useEvaluation((evaluation) => evaluation.zones.results);
  const format = useFormat();
  const schedule = useMemo(() => scheduleZones({ surfaces, zones: zones.zones }), [surfaces, zones]);
  return (
    <ChapterPage
      page="zones"
      given={
        <>
          <div className="fields">
            <PlanItem path={['signal', 'processorId']} label="Processor" items={processors} absent="none chosen" />
          </div>
          {surfaces.surfaces.map((surface) => (
            <SurfaceZonesFields
              key={surface.surfaceId}
              surfaceId={surface.surfaceId}
              name={`${surface.letter} ${surface.name}`}
            />
          ))}
        </>
      }
      resultNote={counted(zones.processors, 'processor')}
      result={
        zones.surfaces.length === 0 ? (
          <EmptyState title="There is no surface yet." />
        ) : (
          zones.surfaces.map((surface) => (
            <FigureTable
              key={surface.surfaceId}
              caption={`Workable widths of ${surfaces.surfaces.find((table) => table.surfaceId === surface.surfaceId)?.letter ?? ''}`}
              captioned
              columns={widthColumns(format)}
              rows={surface.widths}
              keyOf={({ columns, up }) => `${columns}-${up}`}
              isChosen={({ chosen }) => chosen}
            />
          ))
        )
      }
      schedule={zones.zones.length > 0 && <PlanSchedule schedule={schedule} />}
      scheduleNote="zone by zone"
    />
  );
}
