import { Group, Panel, Separator, useDefaultLayout } from 'react-resizable-panels';
import { useBench } from '../state/use-bench';
import { findLocalStore } from '../storage/local-store';
import { Book } from './Book';
import { Contents } from './Contents';
import { DrawingArea } from './DrawingArea';
import { FaultBoundary } from './FaultBoundary';
import { useBenchCommands } from './use-bench-commands';

/** Remembers nothing where the browser has no place for it. */
const nowhere = { getItem: () => null, setItem: () => undefined };

/** The book takes its share of a wide window and no more than its tables need; in pixels. */
function bookPx(): number {
  return Math.round(Math.min(680, Math.max(560, window.innerWidth * 0.41)));
}

/** Contents, book and drawing side by side; the lines between them can be dragged, or moved with arrow keys. */
export function WideLeaves({ slim }: { readonly slim: boolean }) {
  const { defaultLayout, onLayoutChanged } = useDefaultLayout({
    id: slim ? 'voussoir leaves slim' : 'voussoir leaves',
    panelIds: ['leaf-contents', 'leaf-book', 'leaf-drawing'],
    storage: findLocalStore() ?? nowhere,
  });
  const page = useBench((state) => state.page);
  const revision = useBench((state) => state.revision);
  const { save } = useBenchCommands();
  const onSave = () => void save();
  return (
    <Group className="leaves" defaultLayout={defaultLayout} onLayoutChanged={onLayoutChanged}>
      <Panel
        id="leaf-contents"
        defaultSize={slim ? 148 : 186}
        minSize={124}
        maxSize={280}
        groupResizeBehavior="preserve-pixel-size"
      >
        <Contents />
      </Panel>
      <Separator className="leaf-edge" aria-label="Width of the contents" />
      <Panel id="leaf-book" defaultSize={slim ? 440 : bookPx()} minSize={340} groupResizeBehavior="preserve-pixel-size">
        <FaultBoundary of="This page" tryAgainWith={`${page} ${revision}`} onSave={onSave}>
          <Book />
        </FaultBoundary>
      </Panel>
      <Separator className="leaf-edge" aria-label="Width of the chapter" />
      <Panel id="leaf-drawing" minSize={280}>
        <FaultBoundary of="The drawing" tryAgainWith={revision} onSave={onSave}>
          <DrawingArea />
        </FaultBoundary>
      </Panel>
    </Group>
  );
}
