import { stopsOf } from '../../../calc/levers/stops-of';
import { ChapterPage, ChapterSection } from '../../bench/ChapterPage';
import { modeWords } from '../../bench/mode-words';
import { useBench } from '../../state/use-bench';
import { useEvaluation } from '../../state/use-evaluation';
import { FigureTable } from '../../widgets/FigureTable';
import { useFormat } from '../../widgets/use-format';
import { PictureGiven } from './PictureGiven';
import { RateTable } from './RateTable';
import { WhatMustChange } from './WhatMustChange';

/** Rates and depths: what runs, what else must be served, what fits, and what must change if it does not. */
export function PicturePage() {
  const picture = useEvaluation((evaluation) => evaluation.picture.results);
  const panelsShort = useBench(
    ({ plan, evaluation }) => evaluation !== null && stopsOf('panels', evaluation, plan).length > 0,
  );
  const format = useFormat();
  return (
    <ChapterPage
      page="picture"
      given={<PictureGiven />}
      resultNote={`${format(picture.pixels, 'px')} in all`}
      result={
        <>
          <FigureTable
            caption="What every surface is fed with"
            columns={[
              { key: 'letter', title: 'Surface', cell: ({ letter }) => letter },
              { key: 'pixels', title: 'Pixels', cell: ({ pixels }) => format(pixels, 'px') },
              { key: 'mode', title: 'Runs at', cell: ({ mode }) => modeWords(mode) },
              { key: 'rate', title: 'Uncompressed', cell: ({ rateBps }) => format(rateBps, 'bps') },
            ]}
            rows={picture.surfaces}
            keyOf={({ surfaceId }) => surfaceId}
          />
          <ChapterSection title="Frame rate and depth" note="each cell is that rate alone">
            <RateTable />
          </ChapterSection>
          <ChapterSection title="What must change" note="every change alone, the least that makes it fit">
            <WhatMustChange topic="signal" />
          </ChapterSection>
          {panelsShort && (
            <ChapterSection title="What must change for the panels" note="there are not enough of them">
              <WhatMustChange topic="panels" />
            </ChapterSection>
          )}
        </>
      }
    />
  );
}
