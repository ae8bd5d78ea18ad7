import { stopsOf } from '../../../calc/levers/stops-of';
import { ChapterPage } from '../../bench/ChapterPage';
import { usePageHref } from '../../bench/use-page-href';
import { useBench } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { usePlan } from '../../state/use-plan';
import { Caution } from '../../widgets/Caution';
import { FigureList } from '../../widgets/FigureList';
import { useFormat } from '../../widgets/use-format';
import { SurfaceTable } from './SurfaceTable';
import { summaryFigures } from './summary-figures';

const topics = ['signal', 'panels'] as const;

/** The whole plan on one page: what it comes to, and every check with the worst first. */
export function SummaryPage() {
  const headline = useEvaluation((evaluation) => evaluation.headline);
  const mode = usePlan((plan) => plan.picture.base);
  const note = usePlan((plan) => plan.note);
  const mustChange = useBench(
    ({ plan, evaluation }) =>
      evaluation !== null && topics.some((topic) => stopsOf(topic, evaluation, plan).length > 0),
  );
  const format = useFormat();
  const href = usePageHref();
  const figures = summaryFigures(headline, mode, format).map(({ name, value, page }) => ({
    name,
    value: (
      <a className="figure-link" href={href(page)}>
        {value}
      </a>
    ),
  }));
  return (
    <ChapterPage
      page="summary"
      result={
        <>
          {note && <p className="plan-note">{note}</p>}
          {mustChange && (
            <p className="lede">
              Signal or panels go beyond what there is. <a href={href('picture')}>See what must change</a>, each change
              alone with its cost.
            </p>
          )}
          <FigureList figures={figures} />
          <SurfaceTable />
        </>
      }
      resultNote="each figure leads to its chapter"
      caution={
        <Caution>
          These figures help to plan. Local code and a licensed electrician, a qualified rigger or a structural engineer
          decide. A nearly closed ring under a ceiling changes exits, emergency light, smoke detection and sprinkler
          cover: ask the fire authority.
        </Caution>
      }
    />
  );
}
