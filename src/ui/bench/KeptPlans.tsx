import { useEffect, useState } from 'react';
import { isCopyKey } from '../state/copy-key';
import { useBench } from '../state/use-bench';
import type { KeptEntry } from '../storage/plan-shelf';
import { useDeskActions } from '../storage/use-desk';
import { Button } from '../widgets/Button';
import { Dialog } from '../widgets/Dialog';
import { EmptyState } from '../widgets/EmptyState';

/** All plans that this browser keeps: to open, or to forget. */
export function KeptPlans({ isOpen, onClose }: { readonly isOpen: boolean; readonly onClose: () => void }) {
  const desk = useDeskActions();
  const here = useBench((state) => state.documentKey);
  const locale = useBench((state) => state.locale);
  const [kept, setKept] = useState<readonly KeptEntry[]>([]);
  const [asked, setAsked] = useState<string | null>(null);
  const date = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short' });

  useEffect(() => {
    if (isOpen) desk.list().then(setKept, () => setKept([]));
  }, [isOpen, desk]);

  async function forget(key: string): Promise<void> {
    await desk.forget(key);
    setAsked(null);
    setKept(await desk.list());
  }

  return (
    <Dialog title="Plans kept in this browser" isOpen={isOpen} onClose={onClose}>
      <p className="quiet">
        A browser may clear what it keeps, after some idle days or when the disk is full. Save to a file what must last.
      </p>
      {kept.length === 0 && <EmptyState title="No plan is kept here." />}
      <ul className="kept-plans">
        {kept.map(({ key, name, revision, keptAtMs }) => (
          <li key={key}>
            <div>
              <b>{name || 'Plan without a name'}</b>
              <span className="quiet">
                {revision && `revision ${revision}, `}
                {date.format(keptAtMs)}
                {isCopyKey(key) && ', shared copy'}
                {key === here && ', open now'}
              </span>
            </div>
            {asked === key ? (
              <>
                <Button small onClick={() => void forget(key)}>
                  Forget it for good
                </Button>
                <Button small look="plain" onClick={() => setAsked(null)}>
                  Keep
                </Button>
              </>
            ) : (
              key !== here && (
                <>
                  <Button
                    small
                    onClick={() => {
                      onClose();
                      void desk.openKept(key);
                    }}
                  >
                    Open
                  </Button>
                  <Button small look="plain" onClick={() => setAsked(key)}>
                    Forget …
                  </Button>
                </>
              )
            )}
          </li>
        ))}
      </ul>
    </Dialog>
  );
}
