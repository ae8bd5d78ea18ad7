import { useMemo } from 'react';
import { ChapterPage, ChapterSection } from '../../bench/ChapterPage';
import { CheckList } from '../../bench/CheckList';
import { useEvaluation } from '../../state/use-evaluation';
import { usePlan } from '../../state/use-plan';
import { CompareStates } from './CompareStates';
import { IssueRevision } from './IssueRevision';
import { RevisionList } from './RevisionList';
import './revisions.css';

/** What was issued and when, what changed since, and the names that are held by it. */
export function RevisionsPage() {
  const isAnyIssued = usePlan(({ revisions }) => revisions.length > 0);
  const checks = useEvaluation((evaluation) => evaluation.checks);
  const names = useMemo(() => checks.filter(({ id }) => /^(runs|power)\.held-/.test(id)), [checks]);
  return (
    <ChapterPage
      page="revisions"
      given={<IssueRevision />}
      result={
        <>
          <RevisionList />
          {names.length > 0 && (
            <ChapterSection title="Names held">
              <CheckList checks={names} />
            </ChapterSection>
          )}
        </>
      }
      resultNote="the newest first"
      schedule={isAnyIssued ? <CompareStates /> : undefined}
      scheduleNote="what changed; a row leads to what it names"
    />
  );
}
