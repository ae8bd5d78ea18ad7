import { lazy, Suspense, useState } from 'react';
import { pageById } from '../state/pages';
import { useBench } from '../state/use-bench';
import { Button } from '../widgets/Button';
import { Book } from './Book';
import { Contents } from './Contents';
import { DrawingArea } from './DrawingArea';
import { FaultBoundary } from './FaultBoundary';
import { useBenchCommands } from './use-bench-commands';
import type { Leaf } from './use-leaf';

const BehindWall = lazy(async () => ({ default: (await import('../chapters/log/BehindWall')).BehindWall }));

export interface NarrowLeavesProps {
  readonly leaf: Leaf;
  readonly onLeaf: (leaf: Leaf) => void;
}

/** One leaf at a time, with a foot bar at the thumb: find, chapters, drawing or book. */
export function NarrowLeaves({ leaf, onLeaf }: NarrowLeavesProps) {
  const [contentsOpen, setContentsOpen] = useState(false);
  const page = useBench((state) => state.page);
  const revision = useBench((state) => state.revision);
  const { save } = useBenchCommands();
  const onSave = () => void save();
  const show = (next: Leaf) => {
    setContentsOpen(false);
    onLeaf(next);
  };
  const find = () => {
    show('hand');
    document.getElementById('hand-find')?.focus();
  };
  const isShown = (one: Leaf) => !contentsOpen && leaf === one;
  return (
    <>
      <div className="leaf">
        {contentsOpen && <Contents onGo={() => show('book')} />}
        {isShown('hand') && (
          <FaultBoundary of="This view" tryAgainWith={revision} onSave={onSave}>
            <Suspense fallback={<p className="draw-wait">Opening …</p>}>
              <BehindWall onDrawing={() => show('drawing')} />
            </Suspense>
          </FaultBoundary>
        )}
        {isShown('book') && (
          <FaultBoundary of="This page" tryAgainWith={`${page} ${revision}`} onSave={onSave}>
            <Book />
          </FaultBoundary>
        )}
        {isShown('drawing') && (
          <FaultBoundary of="The drawing" tryAgainWith={revision} onSave={onSave}>
            <DrawingArea />
          </FaultBoundary>
        )}
      </div>
      <footer className="foot-bar">
        <Button aria-pressed={isShown('hand')} onClick={find}>
          Find
        </Button>
        <Button aria-expanded={contentsOpen} onClick={() => setContentsOpen(!contentsOpen)}>
          {pageById(page).title} ▾
        </Button>
        <fieldset className="segments" aria-label="Leaf">
          <Button aria-pressed={isShown('drawing')} onClick={() => show('drawing')}>
            Drawing
          </Button>
          <Button aria-pressed={isShown('book')} onClick={() => show('book')}>
            Book
          </Button>
        </fieldset>
      </footer>
    </>
  );
}
