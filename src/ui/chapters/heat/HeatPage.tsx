import { ChapterPage } from '../../bench/ChapterPage';
import { PlanCount, PlanUnit } from '../../bench/PlanFields';
import { usePageHref } from '../../bench/use-page-href';
import { useEvaluation } from '../../state/use-evaluation';
import { usePlan } from '../../state/use-plan';
import { FigureList } from '../../widgets/FigureList';
import { FigureTable } from '../../widgets/FigureTable';
import { GivenLink } from '../../widgets/GivenLink';
import { useFormat } from '../../widgets/use-format';

/** Heat of panels, signal equipment, lamps and people, and what takes it away. */
export function HeatPage() {
  const heat = useEvaluation((evaluation) => evaluation.heat.results);
  const coolingW = usePlan((plan) => plan.wish.coolingW);
  const format = useFormat();
  const href = usePageHref();
  return (
    <ChapterPage
      page="heat"
      given={
        <div className="fields">
          <PlanCount path={['heat', 'people']} label="People in the room" />
          <PlanUnit path={['heat', 'lampsW']} label="Lamps" unit="W" />
          <PlanUnit path={['heat', 'airRiseK']} label="Rise of the air" unit="K" />
          <PlanUnit path={['heat', 'roomRiseK']} label="Rise that stops a shoot" unit="K" />
          <GivenLink
            label="Cooling on site"
            value={format(coolingW, 'W', 'not stated')}
            owner="Wish"
            href={href('wish')}
          />
        </div>
      }
      result={
        <FigureList
          figures={[
            { name: 'Full white', value: format(heat.fullWhiteW, 'W') },
            { name: 'in BTU/h', value: format(heat.fullWhiteBtuh, 'btuh') },
            { name: 'in tons', value: format(heat.fullWhiteTons, 'tons') },
            { name: 'Typical', value: format(heat.typicalW, 'W') },
            { name: 'Air to carry it', value: format(heat.airM3PerS, 'm3/s') },
            { name: 'Warm-up without cooling, air only', value: format(heat.warmUpMin, 'min', 'hall not stated') },
          ]}
        />
      }
      schedule={
        <FigureTable
          caption="Heat by source"
          columns={[
            { key: 'name', title: 'Source', cell: ({ name }) => name },
            { key: 'full', title: 'Full white', cell: ({ fullWhiteW }) => format(fullWhiteW, 'W') },
            { key: 'typical', title: 'Typical', cell: ({ typicalW }) => format(typicalW, 'W') },
          ]}
          rows={heat.bySource}
          keyOf={({ name }) => name}
        />
      }
      scheduleNote="by source"
    />
  );
}
