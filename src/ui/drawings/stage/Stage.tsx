import { Canvas } from '@react-three/fiber';
import { type KeyboardEvent, useMemo, useRef, useState } from 'react';
import { describePanel } from '../../../sheets/describe-panel';
import { describeStage } from '../../../sheets/describe-stage';
import type { Format } from '../../../sheets/format';
import { type Picked, pickedPanels } from '../../../sheets/picked-panels';
import type { StageParts } from '../../../sheets/stage-parts';
import { tintLegend } from '../../../sheets/tint-legend';
import { type Tint, tintPanels } from '../../../sheets/tint-panels';
import { keepStageView } from '../../state/stage-view';
import { Legend } from '../Legend';
import { pressPanel } from '../press-panel';
import { useSteadyParts } from '../use-steady-parts';
import type { CameraViewName } from './camera-views';
import { FrameReport } from './FrameReport';
import { hasWebGl } from './has-web-gl';
import { LookInside } from './LookInside';
import type { OrbitHandle } from './Orbit';
import { PickedCards } from './PickedCards';
import { Picker } from './Picker';
import { Scene } from './Scene';
import { type StagePictures, TestPictures } from './TestPictures';
import { useInks } from './use-inks';
import { useLostContext } from './use-lost-context';
import '../drawings.css';

export interface StageProps {
  readonly parts: StageParts;
  readonly tint: Tint;
  readonly format: Format;
  readonly picked: Picked | null;
  /** Number of the clicked panel through all surfaces; null for a click beside. */
  readonly onSelect: (panel: number | null) => void;
  /** Test pictures on the LED faces; null where none are shown. */
  readonly pictures: StagePictures | null;
  /** Numbers of dark panels; null where none are shown. */
  readonly dark: ArrayLike<number> | null;
  /** Given while a press marks panels. */
  readonly onMark: ((panel: number) => void) | null;
}

const views: readonly { readonly name: CameraViewName; readonly label: string }[] = [
  { name: 'corner', label: 'Corner' },
  { name: 'eye', label: 'Eye level' },
  { name: 'top', label: 'Top' },
];

/** The stage as a card model in three dimensions. Frames are drawn only when something changes. */
export function Stage(props: StageProps) {
  const { tint, format, onSelect, onMark } = props;
  const parts = useSteadyParts(props.parts);
  const board = useRef<HTMLDivElement>(null);
  const picture = useRef<HTMLDivElement>(null);
  const orbit = useRef<OrbitHandle | null>(null);
  const inks = useInks(board);
  const [hovered, setHovered] = useState<number | null>(null);
  const [lost, setLost] = useState(false);
  const tints = useMemo(() => tintPanels(parts, tint), [parts, tint]);
  const picked = useMemo(() => pickedPanels(parts, props.picked), [parts, props.picked]);
  const dark = useMemo(() => Array.from(props.dark ?? []), [props.dark]);
  const pointed = useMemo(() => (hovered === null || picked.includes(hovered) ? [] : [hovered]), [hovered, picked]);
  const legend = useMemo(() => tintLegend(parts, tint), [parts, tint]);
  const [drawable] = useState(hasWebGl);

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey || orbit.current === null) return;
    const turn = turns[event.key];
    if (turn !== undefined) orbit.current.turn(turn[0], turn[1]);
    else if (event.key === '+' || event.key === '=') orbit.current.zoom(1.15);
    else if (event.key === '-') orbit.current.zoom(1 / 1.15);
    else if (event.key === '0') orbit.current.goTo('corner');
    else if ((event.key === ' ' || event.key === 'Enter') && onMark !== null && picked[0] !== undefined)
      onMark(picked[0]);
    else if (event.key === 'Escape' && picked.length > 0) onSelect(null);
    else return;
    event.preventDefault();
  };

  const read = hovered ?? (picked.length === 1 ? picked[0]! : null);
  return (
    <div ref={board} className="board">
      {drawable ? (
        <div
          ref={picture}
          className="board-window"
          role="img"
          aria-label={`The stage as a model. ${describeStage(parts, format)} Arrow keys look round, plus and minus come closer.`}
          tabIndex={0}
          onKeyDown={onKeyDown}
          data-lost={lost}
          data-pictures={props.pictures?.pictures.length}
        >
          {inks !== null && (
            <Canvas frameloop="demand" flat shadows="percentage" dpr={[1, 2]} camera={{ fov: 38, near: 0.1, far: 500 }}>
              <Scene parts={parts} tints={tints} inks={inks} orbit={orbit} onLook={keepStageView} />
              {props.pictures !== null && <TestPictures {...props.pictures} />}
              {props.pictures !== null && <LookInside orbit={orbit} />}
              <PickedCards surfaces={parts.surfaces} panels={dark} colour={inks.dark} opacity={0.86} />
              <PickedCards
                surfaces={parts.surfaces}
                panels={picked}
                colour={inks.accent}
                opacity={dark.length > 0 ? 0.2 : 0.62}
              />
              <PickedCards surfaces={parts.surfaces} panels={pointed} colour={inks.accent} opacity={0.24} />
              <Picker onSelect={(panel) => pressPanel(panel, props)} onHover={setHovered} />
              <LostContext onChange={setLost} />
              <FrameReport on={picture} />
            </Canvas>
          )}
          {lost && <p className="board-lost">The graphics card has dropped the picture; it comes back by itself.</p>}
        </div>
      ) : (
        <p className="board-none">
          This browser cannot draw in three dimensions here. Unrolled and From above show the same stage.
        </p>
      )}
      <div className="board-foot">
        <div className="board-buttons">
          {views.map((view) => (
            <button key={view.name} type="button" onClick={() => orbit.current?.goTo(view.name)}>
              {view.label}
            </button>
          ))}
        </div>
        <Legend entries={legend} />
        <span>grid {parts.lengths === 'feet' ? '1 ft, strong every 5 ft' : '1 m, strong every 5 m'}</span>
        <span className="board-read">{read === null ? 'drag to look round' : describePanel(parts, read)}</span>
      </div>
    </div>
  );
}

const turns: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-0.12, 0],
  ArrowRight: [0.12, 0],
  ArrowUp: [0, 0.08],
  ArrowDown: [0, -0.08],
};

function LostContext({ onChange }: { readonly onChange: (lost: boolean) => void }) {
  useLostContext(onChange);
  return null;
}
