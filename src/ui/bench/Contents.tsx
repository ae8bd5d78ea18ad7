import { pages } from '../state/pages';
import { useBench } from '../state/use-bench';
import { useEvaluation } from '../state/use-evaluation';
import { StatusGlyph } from '../widgets/StatusGlyph';
import { checksOfPage, statusOf } from './page-status';
import { usePageHref } from './use-page-href';

/** The pages of the book, each with its worst mark. */
export function Contents({ onGo }: { readonly onGo?: () => void }) {
  const groups = [...new Set(pages.map((page) => page.group))];
  return (
    <nav className="contents" aria-label="Chapters">
      {groups.map((group) => (
        <div key={group ?? 'first'} className="contents-group">
          {group && <h2>{group}</h2>}
          <ul>
            {pages
              .filter((page) => page.group === group)
              .map((page) => (
                <ContentsLine key={page.id} page={page} onGo={onGo} />
              ))}
          </ul>
        </div>
      ))}
    </nav>
  );
}

interface ContentsLineProps {
  readonly page: (typeof pages)[number];
  readonly onGo: (() => void) | undefined;
}

function ContentsLine({ page, onGo }: ContentsLineProps) {
  const here = useBench((state) => state.page === page.id);
  const evaluation = useEvaluation((all) => all);
  const { status, count } = statusOf(checksOfPage(evaluation, page));
  const href = usePageHref()(page.id);
  return (
    <li>
      <a href={href} aria-current={here ? 'page' : undefined} onClick={onGo}>
        {page.title}
        {status !== 'none' && (
          <span className={`contents-status is-${status}`}>
            <StatusGlyph status={status} />
            {count > 0 && count}
          </span>
        )}
      </a>
    </li>
  );
}
