import { ChapterPage } from '../../bench/ChapterPage';
import { usePlan } from '../../state/use-plan';
import { CompareStates } from './CompareStates';
import { IssueRevision } from './IssueRevision';
import { RevisionList } from './RevisionList';
import './revisions.css';

/** What was issued and when, what changed since, and the names that are held by it. */
export function RevisionsPage() {
  const isAnyIssued = usePlan(({ revisions }) => revisions.length > 0);
  return (
    <ChapterPage
      page="revisions"
      given={<IssueRevision />}
      result={<RevisionList />}
      resultNote="the newest first"
      schedule={isAnyIssued ? <CompareStates /> : undefined}
      scheduleNote="what changed; a row leads to what it names"
    />
  );
}
