import { Suspense, useEffect, useRef } from 'react';
import { useBench } from '../state/use-bench';
import { ChapterPage } from './ChapterPage';
import { chapterRegistry } from './chapter-registry';
import { PrintHead } from './PrintHead';
import { useAskedField } from './use-asked-field';
import { WayIn } from './WayIn';

/** The page in view. */
export function Book() {
  const page = useBench((state) => state.page);
  const box = useRef<HTMLElement>(null);
  const Page = chapterRegistry[page];

  // biome-ignore lint/correctness/useExhaustiveDependencies: another page begins at its top.
  useEffect(() => {
    box.current?.scrollTo({ top: 0 });
  }, [page]);
  useAskedField(box);

  return (
    <main ref={box} className="book" id="book" tabIndex={-1}>
      <PrintHead />
      {page === 'summary' && <WayIn />}
      <Suspense fallback={<p className="quiet">Opening …</p>}>
        {Page ? <Page key={page} /> : <ChapterPage key={page} page={page} />}
      </Suspense>
    </main>
  );
}
