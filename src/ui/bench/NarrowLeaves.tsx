import { useState } from 'react';
import { pageById } from '../state/pages';
import { useBench } from '../state/use-bench';
import { Button } from '../widgets/Button';
import { Book } from './Book';
import { Contents } from './Contents';
import { DrawingArea } from './DrawingArea';
import { FaultBoundary } from './FaultBoundary';
import { useBenchCommands } from './use-bench-commands';

export interface NarrowLeavesProps {
  readonly leaf: 'book' | 'drawing';
  readonly onLeaf: (leaf: 'book' | 'drawing') => void;
  readonly onFind: () => void;
}

/** One leaf at a time, with a foot bar at the thumb: chapters, find, drawing or book. */
export function NarrowLeaves({ leaf, onLeaf, onFind }: NarrowLeavesProps) {
  const [contentsOpen, setContentsOpen] = useState(false);
  const page = useBench((state) => state.page);
  const revision = useBench((state) => state.revision);
  const { save } = useBenchCommands();
  const onSave = () => void save();
  const show = (next: 'book' | 'drawing') => {
    setContentsOpen(false);
    onLeaf(next);
  };
  return (
    <>
      <div className="leaf">
        {contentsOpen && <Contents onGo={() => show('book')} />}
        {!contentsOpen && leaf === 'book' && (
          <FaultBoundary of="This page" tryAgainWith={`${page} ${revision}`} onSave={onSave}>
            <Book />
          </FaultBoundary>
        )}
        {!contentsOpen && leaf === 'drawing' && (
          <FaultBoundary of="The drawing" tryAgainWith={revision} onSave={onSave}>
            <DrawingArea />
          </FaultBoundary>
        )}
      </div>
      <footer className="foot-bar">
        <Button onClick={onFind}>Find</Button>
        <Button aria-expanded={contentsOpen} onClick={() => setContentsOpen(!contentsOpen)}>
          {pageById(page).title} ▾
        </Button>
        <fieldset className="segments" aria-label="Leaf">
          <Button aria-pressed={!contentsOpen && leaf === 'drawing'} onClick={() => show('drawing')}>
            Drawing
          </Button>
          <Button aria-pressed={!contentsOpen && leaf === 'book'} onClick={() => show('book')}>
            Book
          </Button>
        </fieldset>
      </footer>
    </>
  );
}
