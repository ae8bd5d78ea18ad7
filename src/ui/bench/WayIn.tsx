import { useBench } from '../state/use-bench';
import { useDesk, useDeskActions } from '../storage/use-desk';
import { Button } from '../widgets/Button';
import { usePageHref } from './use-page-href';

/** A short way in for a first visit: three jobs as three links. */
export function WayIn() {
  const firstVisit = useDesk((state) => state.firstVisit);
  const desk = useDeskActions();
  const href = usePageHref();
  const closed = useDesk((state) => state.memory.wayInClosed);
  // Words about the sample stand beside the sample only, not beside a plan that was opened after it.
  const loads = useBench((state) => state.loads);
  if (!firstVisit || closed || loads > 1) return null;
  return (
    <aside className="way-in" aria-label="Way in">
      <p>
        This is an invented sample, open to be changed. A plan reads from top to bottom: what is wished, its shape, its
        signal, its supply, its bill. Three ways to begin:
      </p>
      <ul>
        <li>
          <button type="button" className="link" onClick={() => void desk.openBlank()}>
            Which panel suits our hall?
          </button>{' '}
          Start a plan from the wish alone.
        </li>
        <li>
          <a href={href('picture')}>Does what we own fit the frame rate?</a> Every rate and depth, and what must change.
        </li>
        <li>
          <a href={href('crew')}>What does the crew need on Monday?</a> Drawings, lists and check sheets, with the{' '}
          <a href={href('materials')}>bill</a>, as one print.
        </li>
      </ul>
      <Button small look="plain" onClick={() => desk.remember({ wayInClosed: true })}>
        Put away
      </Button>
    </aside>
  );
}
