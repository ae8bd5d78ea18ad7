import { isCopyKey } from '../state/copy-key';
import { selectRecomputing } from '../state/selectors';
import { useActions, useBench } from '../state/use-bench';
import { useDesk, useDeskActions } from '../storage/use-desk';
import { Button } from '../widgets/Button';
import { useBenchCommands } from './use-bench-commands';
import { VersionBanner } from './VersionBanner';

/** What the person must know about the document as a whole, under the top bar. */
export function Banners() {
  return (
    <>
      <VersionBanner />
      <PreviewBanner />
      <FollowBanner />
      <SharedBanner />
      <StorageBanner />
      <FailureBanner />
    </>
  );
}

function PreviewBanner() {
  const label = useBench((state) => state.preview?.label ?? null);
  const recomputing = useBench(selectRecomputing);
  const { keepPreview, endPreview } = useActions();
  if (label === null) return null;
  return (
    <section className="banner" aria-label="Preview">
      <p>
        Only looked at: <b>{label}</b>. The plan is as it was{recomputing ? '; recomputing' : ''}.
      </p>
      <Button small look="primary" onClick={keepPreview}>
        Keep
      </Button>
      <Button small onClick={endPreview}>
        Leave <kbd>Esc</kbd>
      </Button>
    </section>
  );
}

function FollowBanner() {
  const follows = useBench((state) => state.follows);
  const { takeCopy } = useDeskActions();
  if (!follows) return null;
  return (
    <section className="banner" aria-label="Other tab">
      <p>This plan is being changed in another tab. This tab follows it, and takes over when the other one closes.</p>
      <Button small onClick={() => void takeCopy()}>
        Take a copy
      </Button>
    </section>
  );
}

function SharedBanner() {
  const isCopy = useBench((state) => isCopyKey(state.documentKey) && !state.follows);
  const { makeMine } = useDeskActions();
  if (!isCopy) return null;
  return (
    <section className="banner" aria-label="Shared copy">
      <p>A read-only copy of a shared plan; nothing of yours was changed. What is built can be ticked.</p>
      <Button small onClick={() => void makeMine()}>
        Make it mine
      </Button>
    </section>
  );
}

function StorageBanner() {
  const kept = useDesk((state) => state.kept);
  const { save } = useBenchCommands();
  if (kept.kind !== 'failed') return null;
  const why = kept.trouble === 'full' ? 'has no room left' : 'does not let this page keep anything';
  return (
    <section className="banner is-marked" role="alert">
      <p>This browser {why}: the plan lives in this tab only. Save it to a file.</p>
      <Button small onClick={() => void save()}>
        Save file
      </Button>
    </section>
  );
}

function FailureBanner() {
  const failure = useBench((state) => state.failure);
  const { save } = useBenchCommands();
  const { undo } = useActions();
  if (failure === null) return null;
  return (
    <section className="banner is-marked" role="alert">
      <p>
        A fault of this program: the plan as it stands cannot be worked out ({failure}). The figures below belong to the
        plan before it. Nothing is lost.
      </p>
      <Button small onClick={undo}>
        Undo
      </Button>
      <Button small onClick={() => void save()}>
        Save file
      </Button>
    </section>
  );
}
