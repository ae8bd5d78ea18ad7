import { cautions } from '../../../calc/cautions';
import { draftCeiling } from '../../../plan/draft-ceiling';
import { ChapterPage } from '../../bench/ChapterPage';
import { useActions } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { usePlan } from '../../state/use-plan';
import { Button } from '../../widgets/Button';
import { Caution } from '../../widgets/Caution';
import { EmptyState } from '../../widgets/EmptyState';
import { FigureTable } from '../../widgets/FigureTable';
import { useFormat } from '../../widgets/use-format';
import { CeilingGiven } from './CeilingGiven';

/** Ceilings: lattice, outline, holes and travel. */
export function CeilingsPage() {
  const plan = usePlan((whole) => whole);
  const results = useEvaluation((evaluation) => evaluation.ceilings.results.ceilings);
  const { dispatch } = useActions();
  const format = useFormat();
  const panelId = plan.catalogue.panels[0]?.id;
  return (
    <ChapterPage
      page="ceilings"
      given={
        <>
          {plan.ceilings.length === 0 && <EmptyState title="There is no ceiling." />}
          {plan.ceilings.map((ceiling, index) => (
            <CeilingGiven key={ceiling.id} ceiling={ceiling} index={index} />
          ))}
          {panelId !== undefined && (
            <Button
              small
              onClick={() => dispatch({ name: 'add-ceiling', args: { ceiling: draftCeiling(plan, panelId) } })}
            >
              Add a ceiling
            </Button>
          )}
        </>
      }
      result={
        results.length > 0 && (
          <FigureTable
            caption="Ceilings"
            columns={[
              { key: 'name', title: 'Ceiling', cell: ({ letter, name }) => `${letter} ${name}` },
              { key: 'panels', title: 'Panels', cell: ({ table }) => format(table.count, 'count') },
              { key: 'area', title: 'Area', cell: ({ areaM2 }) => format(areaM2, 'm2') },
              {
                key: 'cover',
                title: 'Covers of the ring',
                cell: ({ coverShare }) => format(coverShare, 'share', 'no ring'),
              },
              { key: 'least', title: 'Least gap', cell: ({ gapLeastMm }) => format(gapLeastMm, 'mm', 'no wall') },
              {
                key: 'greatest',
                title: 'Greatest gap',
                cell: ({ gapGreatestMm }) => format(gapGreatestMm, 'mm', 'no wall'),
              },
            ]}
            rows={results}
            keyOf={({ ceilingId }) => ceilingId}
          />
        )
      }
      caution={
        <Caution>
          {cautions.hangingLoad} {cautions.movingParts}
        </Caution>
      }
    />
  );
}
