import { createPortal } from 'react-dom';
import type { PagePicture } from '../../../files/make-crew-set';
import { PageSheet } from './PageSheet';

/** The pages beside the workbench, each on a sheet of its own size: in print only they show. */
export function PrintedPages({ pages }: { readonly pages: readonly PagePicture[] }) {
  const sizes = new Map(pages.map((page) => [sizeName(page), page]));
  const rules = [...sizes].map(
    ([name, { widthMm, heightMm }]) =>
      `@page ${name} { size: ${widthMm}mm ${heightMm}mm; margin: 0; @bottom-left { content: none } @bottom-right { content: none } }`,
  );
  return createPortal(
    <div className="printed-pages">
      <style>{rules.join('\n')}</style>
      {pages.map((page) => (
        <div
          key={page.number}
          className="printed-page"
          // A hair lower than the paper, whose height a browser rounds to its own pixels: no page runs over onto a second.
          style={{ page: sizeName(page), width: `${page.widthMm}mm`, height: `${page.heightMm - 0.3}mm` }}
        >
          <PageSheet svg={page.svg} />
        </div>
      ))}
    </div>,
    document.body,
  );
}

function sizeName({ widthMm, heightMm }: PagePicture): string {
  return widthMm > heightMm ? 'crew-lying' : 'crew-upright';
}
