import { lazy, Suspense, useCallback, useState } from 'react';
import { useBench } from '../state/use-bench';
import { Announcer } from './Announcer';
import { Banners } from './Banners';
import { HeadroomStrip } from './HeadroomStrip';
import { NarrowLeaves } from './NarrowLeaves';
import { TicksIn } from './TicksIn';
import { TopBar } from './TopBar';
import { useBenchCommands } from './use-bench-commands';
import { useDroppedFile } from './use-dropped-file';
import { useLeaf } from './use-leaf';
import { useMedia } from './use-media';
import { useShortcuts } from './use-shortcuts';
import { WideLeaves } from './WideLeaves';

const ShareDialog = lazy(async () => ({ default: (await import('./ShareDialog')).ShareDialog }));
const FindDialog = lazy(async () => ({ default: (await import('./FindDialog')).FindDialog }));

/** The frame: top bar, headroom strip, and the leaves of contents, book and drawing. */
export function Bench() {
  const narrow = useMedia('(max-width: 760px)');
  const slim = useMedia('(max-width: 1180px)');
  const ready = useBench((state) => state.evaluation !== null);
  const [finds, setFinds] = useState(false);
  const [shares, setShares] = useState(false);
  const [leaf, setLeaf] = useLeaf();
  const commands = useBenchCommands();
  const find = useCallback(() => setFinds(true), []);
  const share = useCallback(() => setShares(true), []);
  useShortcuts(find);
  const over = useDroppedFile((file) => void commands.openDropped(file));

  return (
    <div className="bench" data-narrow={narrow ? '' : undefined}>
      <SkipTo id="book">To the chapter</SkipTo>
      {!narrow && <SkipTo id="drawing">To the drawing</SkipTo>}
      <TopBar narrow={slim} onFind={find} onShare={share} />
      <Banners />
      {ready ? (
        <>
          <HeadroomStrip folds={narrow} />
          {narrow ? <NarrowLeaves leaf={leaf} onLeaf={setLeaf} /> : <WideLeaves slim={slim} />}
          <Announcer />
        </>
      ) : (
        <p className="starting" role="status">
          Working out the plan …
        </p>
      )}
      {finds && ready && (
        <Suspense>
          <FindDialog onClose={() => setFinds(false)} onShare={share} onPicked={() => setLeaf('hand')} />
        </Suspense>
      )}
      {shares && (
        <Suspense>
          <ShareDialog onClose={() => setShares(false)} />
        </Suspense>
      )}
      <TicksIn />
      {over && <div className="drop-here">Drop the plan to open it</div>}
    </div>
  );
}

/** Moves the focus past the frame; the address is left alone, since it names the document. */
function SkipTo({ id, children }: { readonly id: string; readonly children: string }) {
  return (
    <button type="button" className="skip" onClick={() => document.getElementById(id)?.focus()}>
      {children}
    </button>
  );
}
