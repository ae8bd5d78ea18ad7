import { type ReactNode, useId } from 'react';
import { type PageId, pageById } from '../state/pages';
import { useEvaluation } from '../state/use-evaluation';
import { FigureList } from '../widgets/FigureList';
import { useFormat } from '../widgets/use-format';
import { CheckList } from './CheckList';
import { headlineFigures } from './headline-figures';
import { checksOfPage } from './page-status';
import { WorkingList } from './WorkingList';

export interface ChapterPageProps {
  readonly page: PageId;
  /** Fields that this page owns, and links to those it uses of others. */
  readonly given?: ReactNode;
  /** Figures; left out: the headline figures of the working. */
  readonly result?: ReactNode;
  /** A few words at the head of the result. */
  readonly resultNote?: string;
  /** The table that a crew works from. */
  readonly schedule?: ReactNode;
  readonly scheduleNote?: string;
  /** Where the chapter's figures touch what can hurt someone. */
  readonly caution?: ReactNode;
}

/** The anatomy that all chapters share: Given, Result, Checks, Schedule, Working. A page without checks of its own has none. */
export function ChapterPage({ page, given, result, resultNote, schedule, scheduleNote, caution }: ChapterPageProps) {
  const about = pageById(page);
  const evaluation = useEvaluation((all) => all);
  const format = useFormat();
  const working = about.chapters.flatMap((chapter) => evaluation[chapter].working);
  const figures = headlineFigures(working, format);
  const isChecked = about.chapters.length > 0 || page === 'summary';
  return (
    <>
      <h1 className="chapter-title" tabIndex={-1}>
        {about.title}
      </h1>
      <p className="lede">{about.lede}</p>
      {given && <ChapterSection title="Given">{given}</ChapterSection>}
      {(result || figures.length > 0) && (
        <ChapterSection title="Result" note={resultNote}>
          {result ?? <FigureList figures={figures} />}
        </ChapterSection>
      )}
      {isChecked && (
        <ChapterSection title="Checks">
          <CheckList checks={checksOfPage(evaluation, about)} />
        </ChapterSection>
      )}
      {schedule && (
        <ChapterSection title="Schedule" note={scheduleNote}>
          {schedule}
        </ChapterSection>
      )}
      {working.length > 0 && (
        <ChapterSection title="Working">
          <WorkingList steps={working} />
        </ChapterSection>
      )}
      {caution}
    </>
  );
}

export interface ChapterSectionProps {
  readonly title: string;
  readonly note?: string | undefined;
  readonly children: ReactNode;
}

/** One ruled section of a chapter; a page may add its own between the five. */
export function ChapterSection({ title, note, children }: ChapterSectionProps) {
  const id = useId();
  return (
    <section className="chapter-section" aria-labelledby={id}>
      <div className="section-head">
        <h2 id={id}>{title}</h2>
        {note && <span>{note}</span>}
      </div>
      {children}
    </section>
  );
}
