import { type KeyboardEvent, useEffect, useMemo, useRef, useState } from 'react';
import type { Drawing, Lines } from '../../sheets/drawing';
import type { Format } from '../../sheets/format';
import type { DarkMarks } from '../../sheets/mark-dark';
import { placeLabels } from '../../sheets/place-labels';
import type { StageParts } from '../../sheets/stage-parts';
import { DimensionLines } from './DimensionLines';
import { Legend } from './Legend';
import { pressPanel } from './press-panel';
import { ScaleBar } from './ScaleBar';
import { Shapes } from './Shapes';
import { Texts } from './Texts';
import { textHeights } from './text-heights';
import { usePointer } from './use-pointer';
import { type StrokeTask, useStroke } from './use-stroke';
import { useView } from './use-view';
import { ViewButtons } from './ViewButtons';
import { type Margins, type Size, toDrawing } from './view';
import { visiblePath } from './visible-path';
import './drawings.css';

/** What a drag does, and in words what Enter does instead of it. */
export interface DrawingStroke extends StrokeTask {
  readonly byKeyboard: string;
}

interface DrawingViewProps {
  readonly drawing: Drawing;
  /** Size of the window that the drawing was made for; null while it is hidden. */
  readonly size: Size | null;
  readonly windowRef: React.RefObject<HTMLDivElement | null>;
  readonly margins: Margins;
  readonly lengths: StageParts['lengths'];
  readonly format: Format;
  /** Number of the panel at a point of the drawing, -1 for none. */
  readonly panelUnder: (xMm: number, yMm: number) => number;
  /** Lines round these panels. */
  readonly outlineOf: (panels: readonly number[]) => Lines;
  /** Line of the chain that a picked panel hangs on. */
  readonly chainOf?: (panel: number) => Lines | null;
  /** One line of words for a panel. */
  readonly describe: (panel: number) => string | null;
  /** The panel at which the keyboard begins. */
  readonly first: number;
  /** The panel beside another one, as drawn: right is +1, up is +1; null at the edge. */
  readonly neighbour: (panel: number, right: number, up: number) => number | null;
  /** Numbers of the picked panels. */
  readonly picked: readonly number[];
  readonly onSelect: (panel: number | null) => void;
  /** Told whether a person has moved or zoomed the drawing: then it should not be laid out anew for its window's size. */
  readonly onByHand?: (byHand: boolean) => void;
  /** Panels that are dark, as the drawing marks them. */
  readonly dark: DarkMarks | null;
  /** Outlines round what changed, with what they mean. */
  readonly changed?: { readonly lines: Lines; readonly words: string } | null;
  /** Given while a press marks panels: the cursor goes there, and the panel is marked. */
  readonly onMark: ((panel: number) => void) | null;
  /** Hatching of what is done, with what it means. */
  readonly done?: { readonly lines: Lines; readonly words: string } | null;
  /** Given while a drag, or two presses of the keyboard, wire or mark. */
  readonly stroke?: DrawingStroke | null;
}

/** A drawing in a window: zoom and pan by wheel, fingers, drag, keys and buttons; hover and selection as overlays of their own. */
export function DrawingView(props: DrawingViewProps) {
  const {
    drawing,
    size,
    windowRef,
    picked,
    outlineOf,
    chainOf,
    onSelect,
    dark,
    onMark,
    stroke: strokeTask = null,
    done = null,
  } = props;
  const { changed = null } = props;
  const selected = picked[0] ?? null;
  const { view, byHand, zoomBy, moveBy, showAll } = useView(drawing.box, size, props.margins, windowRef);
  const { onByHand } = props;
  useEffect(() => onByHand?.(byHand), [onByHand, byHand]);
  const [hovered, setHovered] = useState<number | null>(null);
  const latestView = useRef(view);
  latestView.current = view;

  const panelAtPixel = (x: number, y: number): number | null => {
    if (latestView.current === null) return null;
    const { xMm, yMm } = toDrawing(latestView.current, x, y);
    const panel = props.panelUnder(xMm, yMm);
    return panel < 0 ? null : panel;
  };
  const stroke = useStroke(selected, panelAtPixel, strokeTask);
  const pointer = usePointer({
    zoomBy,
    moveBy,
    onClick: (x, y) => pressPanel(panelAtPixel(x, y), props),
    onStroke: strokeTask === null ? null : (spot, phase) => stroke.draw(spot.x, spot.y, phase),
    onHover: (spot) => setHovered(spot === null ? null : panelAtPixel(spot.x, spot.y)),
  });
  const texts = useMemo(
    () =>
      view === null || size === null
        ? []
        : placeLabels(drawing.labels, drawing.dimensions, {
            ...view,
            widthPx: size.width,
            heightPx: size.height,
            sizes: textHeights,
          }),
    [drawing, view, size],
  );

  const outline = useMemo(() => outlineOf(picked), [outlineOf, picked]);
  const chain = useMemo(() => (picked.length === 1 ? (chainOf?.(picked[0]!) ?? null) : null), [chainOf, picked]);

  const onKeyDown = (event: KeyboardEvent) => {
    const arrow = arrows[event.key];
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    if (arrow !== undefined && event.shiftKey && (selected !== null || onMark !== null)) {
      const next = selected === null ? props.first : props.neighbour(selected, arrow[0], arrow[1]);
      setHovered(null);
      if (next !== null) onSelect(next);
    } else if (arrow !== undefined) moveBy(-60 * arrow[0], 60 * arrow[1]);
    else if (event.key === '+' || event.key === '=') zoomBy(1.25);
    else if (event.key === '-') zoomBy(0.8);
    else if (event.key === '0') showAll();
    else if (event.key === 'Enter' && strokeTask !== null && selected !== null) stroke.press();
    else if ((event.key === ' ' || event.key === 'Enter') && onMark !== null && selected !== null) onMark(selected);
    else if (event.key === 'Escape' && stroke.held !== null) stroke.letGo();
    else if (event.key === 'Escape' && selected !== null) onSelect(null);
    else return;
    event.preventDefault();
  };

  const read = hovered ?? (picked.length === 1 ? selected : null);
  return (
    <div className="board">
      <div
        ref={windowRef}
        className="board-window"
        role="application"
        aria-label={`${drawing.title}, ${drawing.notes.join(', ')}. Arrow keys move, plus and minus zoom, 0 shows all, Shift with an arrow goes to the next panel${onMark === null ? '' : ', space marks it as dark'}${strokeTask === null ? '' : `, ${strokeTask.byKeyboard}`}.`}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the drawing takes keys for moving and zooming
        tabIndex={0}
        onKeyDown={onKeyDown}
        {...pointer}
      >
        {view !== null && size !== null && (
          <svg width={size.width} height={size.height} aria-hidden="true" data-scale={view.scale}>
            <Shapes drawing={drawing} view={view} size={size} />
            {done !== null && <path className="overlay-done" d={visiblePath(done.lines, view, size)} />}
            {dark !== null && <path className="overlay-dark" d={visiblePath(dark.fields, view, size)} />}
            {dark !== null && <path className="overlay-crosses" d={visiblePath(dark.crosses, view, size)} />}
            {chain !== null && <path className="overlay-chain" d={visiblePath(chain, view, size)} />}
            {changed !== null && <path className="overlay-changed" d={visiblePath(changed.lines, view, size)} />}
            {picked.length > 0 && (
              <path
                className={dark === null ? 'overlay-selected' : 'overlay-selected over-dark'}
                d={visiblePath(outline, view, size)}
              />
            )}
            {stroke.panels.length > 0 && (
              <path className="overlay-stroke" d={visiblePath(outlineOf(stroke.panels), view, size)} />
            )}
            {hovered !== null && <path className="overlay-hovered" d={visiblePath(outlineOf([hovered]), view, size)} />}
            <DimensionLines dimensions={drawing.dimensions} view={view} />
            <Texts texts={texts} />
          </svg>
        )}
      </div>
      <div className="board-foot">
        <ViewButtons onCloser={() => zoomBy(1.25)} onFarther={() => zoomBy(0.8)} onAll={showAll} />
        {view !== null && <ScaleBar scale={view.scale} lengths={props.lengths} format={props.format} />}
        <Legend entries={drawing.legend} />
        {changed !== null && (
          <span className="board-legend">
            <i className="dash-box" />
            {changed.words}
          </span>
        )}
        {done !== null && (
          <span className="board-legend">
            <i className="hatch-box" />
            {done.words}
          </span>
        )}
        <span className="board-read">
          {stroke.held !== null && `from ${props.describe(stroke.held)}: `}
          {read === null ? drawing.notes.join('; ') : props.describe(read)}
        </span>
      </div>
    </div>
  );
}

const arrows: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};
