import { lazy, Suspense, useMemo } from 'react';
import { panelAt } from '../../calc/surfaces/panel-at';
import { stageParts } from '../../sheets/stage-parts';
import type { UnrolledStroke } from '../drawings/Unrolled';
import { useActions, useBench } from '../state/use-bench';
import { useDrawing } from '../state/use-drawing';
import { useEvaluation } from '../state/use-evaluation';
import { usePlan } from '../state/use-plan';
import { EmptyState } from '../widgets/EmptyState';
import { useFormat } from '../widgets/use-format';
import { DrawingToolbar } from './DrawingToolbar';
import { useChangedPanels } from './use-changed-panels';
import { useDarkPanels } from './use-dark-panels';
import { useDonePanels } from './use-done-panels';
import { useHandWiring } from './use-hand-wiring';
import { usePicked } from './use-picked';
import { useStagePictures } from './use-stage-pictures';
import { WayOfPanel } from './WayOfPanel';

const Stage = lazy(async () => ({ default: (await import('../drawings/stage/Stage')).Stage }));
const Unrolled = lazy(async () => ({ default: (await import('../drawings/Unrolled')).Unrolled }));
const FromAbove = lazy(async () => ({ default: (await import('../drawings/FromAbove')).FromAbove }));

/** The drawing of the stage, how it is looked at, and the way of what is picked in it. */
export function DrawingArea() {
  return (
    <section className="draw" aria-label="Drawing" id="drawing" tabIndex={-1}>
      <DrawingToolbar />
      <div className="draw-body">
        <Suspense fallback={<p className="draw-wait">Drawing …</p>}>
          <ChosenDrawing />
        </Suspense>
      </div>
      <WayOfPanel />
    </section>
  );
}

function ChosenDrawing() {
  const plan = usePlan((all) => all);
  const evaluation = useEvaluation((all) => all);
  const { view, surfaceId, from, tint } = useDrawing();
  const picked = usePicked();
  const changed = useChangedPanels();
  const { dark, onMark, onBand } = useDarkPanels();
  const done = useDonePanels();
  const hand = useHandWiring();
  const wires = useBench((state) => state.page === 'runs' && state.drawing.wires);
  const documentKey = useBench((state) => state.documentKey);
  const actions = useActions();
  const format = useFormat();
  const pictures = useStagePictures(view === 'stage');
  const parts = useMemo(() => stageParts(plan, evaluation), [plan, evaluation]);
  const { surfaces } = evaluation;
  const surface = surfaces.surfaces.find((one) => one.surfaceId === surfaceId) ?? surfaces.surfaces[0];
  if (!surface || surfaces.total === 0) {
    return (
      <EmptyState title="Nothing to draw yet.">
        Shape a wall or choose a ring from the wish, and it stands here.
      </EmptyState>
    );
  }
  const onSelect = (index: number | null) => {
    const panel = index === null ? null : panelAt(surfaces, index);
    actions.select(panel && { kind: 'panel', index: panel.index, name: panel.name });
  };
  const shared = { parts, tint, format, picked, onSelect, dark, onMark };
  const marking: UnrolledStroke | null = onBand && { does: 'marks', onStroke: onBand };
  const stroke: UnrolledStroke | null = wires ? { does: 'wires', onStroke: hand.stroke } : marking;
  // Another document begins with all of it in view.
  if (view === 'stage') return <Stage key={documentKey} {...shared} pictures={pictures} />;
  if (view === 'above') return <FromAbove key={documentKey} {...shared} />;
  return (
    <Unrolled
      key={documentKey}
      {...shared}
      surfaceId={surface.surfaceId}
      from={from}
      changed={changed}
      done={done}
      stroke={stroke}
    />
  );
}
