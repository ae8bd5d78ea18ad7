import { useState } from 'react';
import { cautions } from '../../../calc/cautions';
import { counted } from '../../../units/counted';
import { ChapterPage } from '../../bench/ChapterPage';
import { SearchProgress } from '../../bench/SearchProgress';
import { Button } from '../../widgets/Button';
import { Caution } from '../../widgets/Caution';
import { CrewChoices } from './CrewChoices';
import { PageGallery } from './PageGallery';
import { PageViewer } from './PageViewer';
import { PrintedPages } from './PrintedPages';
import { useCrewFile } from './use-crew-file';
import { useCrewPages } from './use-crew-pages';
import { printWithWholeFaces, usePrinting } from './use-printing';
import './crew.css';

/** A browser takes its time to print more. */
const manyPages = 150;

/** Everything that the crew gets on paper: chosen, looked at, saved as PDF, printed. */
export function CrewPage() {
  const { asked, parts, pages, search, share, isReady } = useCrewPages();
  const file = useCrewFile();
  const [open, setOpen] = useState<number | null>(null);
  const isPrinting = usePrinting(isReady && pages.length > 0);
  return (
    <>
      <ChapterPage
        page="crew"
        given={<CrewChoices asked={asked} parts={parts} />}
        resultNote={isReady ? counted(pages.length, 'page') : ''}
        result={
          <>
            <div className="table-actions">
              <Button look="primary" disabled={!isReady || pages.length === 0} onClick={() => file.save(asked)}>
                Save PDF
              </Button>
              <Button disabled={!isReady || pages.length === 0} onClick={() => void printWithWholeFaces()}>
                Print the set
              </Button>
            </div>
            <p className="quiet">
              Print at actual size, not fitted to the page: then the scale bars measure true. The PDF asks for it by
              itself.{pages.length > manyPages && ' A set of so many pages prints faster from the PDF.'}
            </p>
            {file.share !== null && <SearchProgress of={file.search} label="Making the PDF" share={file.share} />}
            {file.share === null && !isReady && (
              <SearchProgress of={search} label="Laying out the pages" share={share} />
            )}
            <PageGallery pages={pages} onOpen={setOpen} />
          </>
        }
        caution={<Caution>{cautions.general}</Caution>}
      />
      {open !== null && <PageViewer pages={pages} index={open} onIndex={setOpen} onClose={() => setOpen(null)} />}
      {isPrinting && <PrintedPages pages={pages} />}
    </>
  );
}
