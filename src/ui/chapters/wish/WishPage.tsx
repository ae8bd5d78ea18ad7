import { ChapterPage, ChapterSection } from '../../bench/ChapterPage';
import { modeWords } from '../../bench/mode-words';
import { PlanChoice, PlanCount, PlanText, PlanUnit } from '../../bench/PlanFields';
import { usePageHref } from '../../bench/use-page-href';
import { useEvaluation } from '../../state/use-evaluation';
import { usePlan } from '../../state/use-plan';
import { FigureTable } from '../../widgets/FigureTable';
import { GivenLink } from '../../widgets/GivenLink';
import { useFormat } from '../../widgets/use-format';
import { BuildsFound } from './BuildsFound';
import { StockTable } from './StockTable';

const notStated = 'not stated';

/** What is wanted and what there is, and how far the plan is from it. */
export function WishPage() {
  const lines = useEvaluation((evaluation) => evaluation.wish.results.lines);
  const base = usePlan((plan) => plan.picture.base);
  const form = usePlan((plan) => plan.wish.wall.form);
  const format = useFormat();
  const href = usePageHref();
  return (
    <ChapterPage
      page="wish"
      given={
        <div className="fields">
          <PlanChoice
            path={['wish', 'wall', 'form']}
            label="Form"
            choices={[
              { value: 'ring', label: 'a ring or part of one' },
              { value: 'flat', label: 'a flat wall' },
            ]}
          />
          <PlanUnit
            path={['wish', 'wall', 'acrossMm']}
            label={form === 'ring' ? 'Inside diameter' : 'Length'}
            unit="mm"
            absent={notStated}
          />
          <PlanUnit path={['wish', 'wall', 'heightMm']} label="Height" unit="mm" absent={notStated} />
          {form === 'ring' && (
            <PlanUnit path={['wish', 'wall', 'openingMm']} label="Opening" unit="mm" absent={notStated} />
          )}
          <PlanUnit path={['wish', 'hall', 'lengthMm']} label="Hall, length" unit="mm" absent={notStated} />
          <PlanUnit path={['wish', 'hall', 'widthMm']} label="Hall, width" unit="mm" absent={notStated} />
          <PlanUnit path={['wish', 'hall', 'clearHeightMm']} label="Hall, clear height" unit="mm" absent={notStated} />
          <PlanUnit path={['wish', 'hall', 'walkwayMm']} label="Walkway behind the wall" unit="mm" />
          <PlanUnit path={['wish', 'vehicle', 'widthMm']} label="Truck, width" unit="mm" absent={notStated} />
          <PlanUnit path={['wish', 'vehicle', 'heightMm']} label="Truck, height" unit="mm" absent={notStated} />
          <PlanUnit path={['wish', 'budget']} label="Budget" unit="money" absent={notStated} />
          <PlanUnit path={['wish', 'coolingW']} label="Cooling on site" unit="W" absent={notStated} />
          <PlanCount path={['wish', 'camerasAtOnce']} label="Cameras at once" least={1} />
          <GivenLink label="Rate and depth" value={modeWords(base)} owner="Picture" href={href('picture')} />
          <PlanText path={['wish', 'note']} label="Note" />
        </div>
      }
      result={
        <>
          <ChapterSection
            title="Which panel, which ring"
            note="of each panel the nearest to the wish; what fits first, then the cheapest"
          >
            <BuildsFound />
          </ChapterSection>
          <FigureTable
            caption="Asked and planned"
            columns={[
              { key: 'name', title: 'Wished for', cell: ({ name }) => name },
              { key: 'asked', title: 'Asked', cell: ({ asked, unit }) => format(asked, unit, notStated) },
              { key: 'planned', title: 'As planned', cell: ({ planned, unit }) => format(planned, unit, 'none yet') },
            ]}
            rows={lines}
            keyOf={({ field }) => field}
          />
        </>
      }
      schedule={
        <ChapterSection title="What there is" note="owned, and how many more can be had">
          <StockTable />
        </ChapterSection>
      }
    />
  );
}
