import { useEffect, useRef, useState } from 'react';
import type { Problem } from '../storage/desk-state';
import { pickPlanFile, savePlanFile } from '../storage/plan-file';
import type { KeptEntry } from '../storage/plan-shelf';
import { useDesk, useDeskActions } from '../storage/use-desk';
import { Button } from '../widgets/Button';
import { Mark } from './Mark';
import { problemWords } from './problem-words';

const origins: Readonly<Record<Problem['from'], string>> = {
  file: 'File',
  browser: 'Kept in this browser as',
  link: 'Link to',
};

/** What could not be opened: why, where, and what to do. The text itself is offered as it is. */
export function ProblemPage({ problem }: { readonly problem: Problem }) {
  const desk = useDeskActions();
  const hasBench = useDesk((state) => state.bench !== null);
  const [kept, setKept] = useState<readonly KeptEntry[]>([]);
  const title = useRef<HTMLHeadingElement>(null);
  const { title: said, advice } = problemWords(problem);
  const { name, sentence, path, text, from } = problem;

  useEffect(() => {
    title.current?.focus();
    desk.list().then(setKept, () => setKept([]));
  }, [desk]);

  async function openAnother(): Promise<void> {
    const file = await pickPlanFile().catch(() => null);
    if (file) await desk.openFile(file);
  }

  return (
    <main className="problem">
      <Mark />
      <h1 ref={title} tabIndex={-1}>
        {said}
      </h1>
      <dl>
        <dt>{origins[from]}</dt>
        <dd>{name}</dd>
        <dt>Reason</dt>
        <dd>{sentence}</dd>
        {path !== null && (
          <>
            <dt>Where</dt>
            <dd className="mono">{path}</dd>
          </>
        )}
        <dt>What to do</dt>
        <dd>{advice}</dd>
      </dl>
      <p className="quiet">Nothing was changed{hasBench ? ': the plan that was open is still there' : ''}.</p>
      <div className="problem-actions">
        {hasBench && (
          <Button look="primary" onClick={desk.closeProblem}>
            Back to the plan
          </Button>
        )}
        <Button onClick={() => void openAnother()}>Open another file …</Button>
        {text !== null && (
          <Button onClick={() => void savePlanFile(text, `${name.replace(/\.json$/i, '')}, as found.json`, null)}>
            Save its text to a file
          </Button>
        )}
        <Button onClick={() => void desk.openBlank()}>New plan</Button>
        <Button onClick={() => void desk.openSample()}>Open the sample</Button>
      </div>
      {kept.length > 0 && (
        <section aria-label="Plans kept in this browser">
          <h2>Plans kept in this browser</h2>
          <ul>
            {kept.map((entry) => (
              <li key={entry.key}>
                <button type="button" className="link" onClick={() => void desk.openKept(entry.key)}>
                  {entry.name || 'Plan without a name'}
                </button>
                {entry.revision && <span className="quiet"> revision {entry.revision}</span>}
              </li>
            ))}
          </ul>
        </section>
      )}
    </main>
  );
}
