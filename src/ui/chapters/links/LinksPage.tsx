import { useMemo } from 'react';
import { leastByFamily } from '../../../calc/links/least-by-family';
import { linkById } from '../../../calc/links/link-by-id';
import type { SurfaceLinks } from '../../../calc/links/link-result';
import { scheduleLinks } from '../../../sheets/schedule-links';
import { counted } from '../../../units/counted';
import { ChapterPage, ChapterSection } from '../../bench/ChapterPage';
import { modeWords } from '../../bench/mode-words';
import { PlanSchedule } from '../../bench/PlanSchedule';
import { useEvaluation } from '../../state/use-evaluation';
import { ComparisonTable } from '../../widgets/ComparisonTable';
import { EmptyState } from '../../widgets/EmptyState';
import type { FigureColumn } from '../../widgets/FigureTable';
import { type Format, useFormat } from '../../widgets/use-format';
import { familyWords } from './family-words';
import { LinksGiven } from './LinksGiven';
import { LinkTable } from './LinkTable';

const families = ['tmds', 'frl', 'displayport', 'sdi', 'ethernet'] as const;

const sentFigures = (format: Format): readonly FigureColumn<SurfaceLinks>[] => [
  { key: 'letter', title: 'Surface', cell: ({ letter }) => letter },
  { key: 'canvas', title: 'Canvas, px', cell: ({ canvas }) => (canvas ? `${canvas.width} × ${canvas.height}` : '–') },
  { key: 'mode', title: 'Asks most at', cell: ({ mode }) => modeWords(mode) },
  {
    key: 'totals',
    title: 'With blanking, px',
    cell: ({ timing }) => (timing ? `${timing.totalWidth} × ${timing.totalHeight}` : 'no timing'),
  },
  { key: 'clock', title: 'Pixel clock', cell: ({ timing }) => format(timing?.pixelClockHz ?? null, 'Hz', '–') },
  { key: 'payload', title: 'Payload', cell: ({ payloadBps }) => format(payloadBps, 'bps', '–') },
  {
    key: 'link',
    title: 'Link',
    cell: ({ chosen }) => (chosen ? linkById(chosen.linkId)!.name : 'none that carries it'),
  },
  {
    key: 'left',
    title: 'Left of it',
    cell: ({ chosen }) => (chosen?.fits ? format(chosen.marginShare, 'share', '–') : '–'),
  },
  ...families.map((kind) => ({
    key: kind,
    title: `Least of ${familyWords[kind]}`,
    cell: (surface: SurfaceLinks) => {
      const least = leastByFamily(surface).get(kind);
      return least === undefined ? 'none carries it' : linkById(least.linkId)!.name;
    },
  })),
  { key: 'cables', title: 'Outputs, cables', cell: ({ outputs, cables }) => `${outputs}, ${cables}` },
];

/** What is sent to the processors, and which links carry it. */
export function LinksPage() {
  const nodes = useEvaluation((evaluation) => evaluation.nodes.results.nodes);
  const links = useEvaluation((evaluation) => evaluation.links.results.surfaces);
  const format = useFormat();
  const sent = links.filter(({ canvas }) => canvas !== null);
  const schedule = useMemo(() => scheduleLinks({ nodes, links }), [nodes, links]);
  const outputs = sent.reduce((sum, surface) => sum + surface.outputs, 0);
  return (
    <ChapterPage
      page="links"
      given={<LinksGiven />}
      resultNote={`${counted(outputs, 'output')}, RGB 4:4:4 without compression`}
      result={
        sent.length === 0 ? (
          <EmptyState title="There is no zone yet, and so nothing to send." />
        ) : (
          <>
            <ComparisonTable
              caption="What every surface is sent"
              figures={sentFigures(format)}
              things={sent}
              keyOf={({ surfaceId }) => surfaceId}
            />
            <ChapterSection title="Every link" note="the served mode that asks most of each">
              {sent.map((surface) => (
                <LinkTable key={surface.surfaceId} links={surface} />
              ))}
            </ChapterSection>
          </>
        )
      }
      schedule={schedule.count > 0 && <PlanSchedule schedule={schedule} />}
      scheduleNote="output by output"
    />
  );
}
