import { useEffect, useRef, useState } from 'react';
import type { PagePicture } from '../../../files/make-crew-set';
import { PageSheet } from './PageSheet';

export interface PageGalleryProps {
  readonly pages: readonly PagePicture[];
  readonly onOpen: (index: number) => void;
}

/** The pages small, in their order; those in sight are drawn. */
export function PageGallery({ pages, onOpen }: PageGalleryProps) {
  return (
    <ol className="page-gallery">
      {pages.map((page) => (
        <Thumbnail key={page.number} page={page} onOpen={() => onOpen(page.number - 1)} />
      ))}
    </ol>
  );
}

/** How far outside the window a page is drawn already. */
const ahead = '400px';

function Thumbnail({ page, onOpen }: { readonly page: PagePicture; readonly onOpen: () => void }) {
  const box = useRef<HTMLLIElement>(null);
  const [isSeen, setSeen] = useState(false);
  useEffect(() => {
    const watch = new IntersectionObserver((entries) => setSeen(entries.at(-1)?.isIntersecting === true), {
      rootMargin: ahead,
    });
    if (box.current) watch.observe(box.current);
    return () => watch.disconnect();
  }, []);
  return (
    <li ref={box}>
      <button type="button" onClick={onOpen} aria-label={`Open sheet ${page.number}: ${page.title}`}>
        <span className="page-paper" style={{ aspectRatio: `${page.widthMm} / ${page.heightMm}` }}>
          {isSeen && <PageSheet svg={page.svg} />}
        </span>
        <span className="page-name">
          <span className="figure">{page.number}</span> {page.title}
        </span>
      </button>
    </li>
  );
}
