import { useCallback, useMemo, useRef, useState } from 'react';
import { chainThrough } from '../../sheets/chain-through';
import { dataChains, powerChains } from '../../sheets/chains';
import { describePanel } from '../../sheets/describe-panel';
import { drawUnrolled, type UnrolledDrawing } from '../../sheets/draw-unrolled';
import type { Lines } from '../../sheets/drawing';
import type { Format } from '../../sheets/format';
import { LineBuilder } from '../../sheets/line-builder';
import { markChangedUnrolled } from '../../sheets/mark-changed';
import { markDarkUnrolled } from '../../sheets/mark-dark';
import { markDoneUnrolled } from '../../sheets/mark-done';
import { panelsBetween } from '../../sheets/panels-between';
import { type Picked, pickedPanels } from '../../sheets/picked-panels';
import type { StageParts } from '../../sheets/stage-parts';
import { stripsForSheet } from '../../sheets/strips-for-sheet';
import type { Tint } from '../../sheets/tint-panels';
import { traceEdges } from '../../sheets/trace-edges';
import { columnLeftMm, type From, panelUnder, rowTopMm, type StripLayout } from '../../sheets/unrolled-grid';
import { type DrawingStroke, DrawingView } from './DrawingView';
import type { MarkedPanels } from './marked-panels';
import { useSize } from './use-size';
import { useSteadyParts } from './use-steady-parts';
import type { Size } from './view';

/** Panels for which a step of the work is done, and what their hatching means. */
export interface Done {
  /** By panel through all surfaces, 1 where it is done. */
  readonly panels: ArrayLike<number>;
  readonly words: string;
}

export interface UnrolledStroke {
  readonly does: 'wires' | 'marks';
  readonly onStroke: (panels: readonly number[]) => void;
}

export interface UnrolledProps {
  readonly parts: StageParts;
  readonly surfaceId: string;
  readonly from: From;
  readonly tint: Tint;
  readonly format: Format;
  readonly picked: Picked | null;
  /** Number of the clicked panel through all surfaces; null for a click beside. */
  readonly onSelect: (panel: number | null) => void;
  /** Numbers of dark panels; null where none are shown. */
  readonly dark: ArrayLike<number> | null;
  readonly onMark: ((panel: number) => void) | null;
  /** Null where nothing is outlined for having changed. */
  readonly changed: MarkedPanels | null;
  /** Null where nothing is hatched. */
  readonly done: Done | null;
  /** Given while a drag wires runs by hand, or marks all panels of a rectangle. */
  readonly stroke: UnrolledStroke | null;
}

const margins = { left: 34, right: 74, top: 6, bottom: 8 };

/** One surface laid flat, in as many strips as let it be largest in its window. */
export function Unrolled(props: UnrolledProps) {
  const { surfaceId, from, tint, format } = props;
  const parts = useSteadyParts(props.parts);
  const windowRef = useRef<HTMLDivElement>(null);
  const size = useSize(windowRef);
  const [byHand, setByHand] = useState(false);
  const strips = useStrips(parts, surfaceId, size, byHand);
  const drawn = useMemo(
    () => drawUnrolled(parts, { surfaceId, from, tint, strips }, format),
    [parts, surfaceId, from, tint, strips, format],
  );
  const picked = useMemo(() => pickedPanels(parts, props.picked), [parts, props.picked]);
  const dark = useMemo(
    () =>
      drawn === null || props.dark === null ? null : markDarkUnrolled(drawn.grid, drawn.offset, Array.from(props.dark)),
    [drawn, props.dark],
  );
  const done = useMemo(
    () =>
      drawn === null || props.done === null
        ? null
        : { lines: markDoneUnrolled(drawn.grid, drawn.offset, props.done.panels), words: props.done.words },
    [drawn, props.done],
  );
  const changed = useMemo(
    () =>
      drawn === null || props.changed === null
        ? null
        : { lines: markChangedUnrolled(drawn.grid, drawn.offset, props.changed.panels), words: props.changed.words },
    [drawn, props.changed],
  );
  const outlineOf = useCallback(
    (panels: readonly number[]) => (drawn === null ? noLines : outline(drawn, panels)),
    [drawn],
  );
  const chainOf = useCallback(
    (panel: number) => {
      if (drawn === null) return null;
      const chains = tint === 'circuit' || tint === 'leg' ? powerChains(parts, 'leg') : dataChains(parts);
      return chainThrough(drawn.grid, drawn.offset, chains, panel);
    },
    [drawn, parts, tint],
  );
  if (drawn === null) return <p className="board-none">This surface has no panels yet.</p>;
  return (
    <DrawingView
      drawing={drawn.drawing}
      size={size}
      windowRef={windowRef}
      margins={margins}
      lengths={parts.lengths}
      format={format}
      panelUnder={(xMm, yMm) => {
        const found = panelUnder(drawn.grid, xMm, yMm);
        return found < 0 ? -1 : found + drawn.offset;
      }}
      outlineOf={outlineOf}
      chainOf={chainOf}
      describe={(panel) => describePanel(parts, panel)}
      neighbour={(panel, right, up) => neighbour(drawn, panel - drawn.offset, right, up)}
      first={drawn.offset}
      picked={picked}
      onSelect={props.onSelect}
      onByHand={setByHand}
      dark={dark}
      changed={changed}
      onMark={props.onMark}
      done={done}
      stroke={strokeOf(props.stroke, drawn)}
    />
  );
}

/** The same object for as long as the layout is the same; while a person looks close, the window's size changes nothing. */
function useStrips(parts: StageParts, surfaceId: string, size: Size | null, byHand: boolean): StripLayout {
  const fitting = stripsIn(parts, surfaceId, size);
  const [held, setHeld] = useState({ surfaceId, strips: fitting });
  const isSurface = held.surfaceId === surfaceId;
  if (isSurface && (byHand || sameStrips(held.strips, fitting))) return held.strips;
  setHeld({ surfaceId, strips: fitting });
  return fitting;
}

function sameStrips(a: StripLayout, b: StripLayout): boolean {
  return a.count === b.count && a.aboveMm === b.aboveMm && a.belowMm === b.belowMm;
}

function stripsIn(parts: StageParts, surfaceId: string, size: Size | null): StripLayout {
  const table = parts.surfaces.surfaces.find((one) => one.surfaceId === surfaceId);
  const type = table?.types[0];
  if (table === undefined || type === undefined || size === null) return { count: 1, aboveMm: 0, belowMm: 0 };
  const width = Math.max(40, size.width - margins.left - margins.right);
  const height = Math.max(40, size.height - margins.top - margins.bottom);
  return stripsForSheet(table.columns, type.widthMm, heightOf(parts, surfaceId), width, height);
}

function heightOf(parts: StageParts, surfaceId: string): number {
  const wall = parts.walls.find((one) => one.wallId === surfaceId);
  if (wall !== undefined) return wall.baseMm + wall.heightMm;
  const table = parts.surfaces.surfaces.find((one) => one.surfaceId === surfaceId);
  return (table?.rows ?? 1) * (table?.types[0]?.heightMm ?? 1);
}

/** Wiring goes from neighbour to neighbour, marking takes all between two corners. */
function strokeOf(stroke: UnrolledStroke | null, { grid, offset }: UnrolledDrawing): DrawingStroke | null {
  if (stroke === null) return null;
  const { onStroke } = stroke;
  if (stroke.does === 'wires') {
    return { onStroke, byKeyboard: 'Enter on one panel and then on its neighbour joins two runs or cuts one' };
  }
  const isHere = (panel: number) => panel >= offset && panel < offset + grid.table.count;
  return {
    onStroke,
    between: (one, other) =>
      isHere(one) && isHere(other)
        ? panelsBetween(grid.table, one - offset, other - offset).map((local) => local + offset)
        : [one],
    byKeyboard: 'Enter on one panel and then on another marks all between them',
  };
}

const noLines = new LineBuilder().build();

/** Round the panels where they are many, round the one where it is one: a hover must cost nothing. */
function outline({ grid, offset }: UnrolledDrawing, panels: readonly number[]): Lines {
  const locals = panels.map((panel) => panel - offset).filter((local) => local >= 0 && local < grid.table.count);
  const only = locals[0];
  if (only === undefined) return noLines;
  if (locals.length > 1) {
    const inside = new Set(locals);
    return traceEdges(grid, (a, b) => inside.has(a) !== inside.has(b)).build();
  }
  const column = grid.table.column[only]!;
  const row = grid.table.row[only]!;
  const strip = grid.strips[grid.stripOf[column]!]!;
  const left = columnLeftMm(grid, strip, column);
  const [top, bottom] = [rowTopMm(grid, strip, row), rowTopMm(grid, strip, row - 1)];
  return new LineBuilder().rectangle(left, top, left + grid.columnWidthMm, bottom).build(true);
}

function neighbour({ grid, offset }: UnrolledDrawing, local: number, right: number, up: number): number | null {
  if (local < 0 || local >= grid.table.count) return null;
  const { columns, rows, at } = grid.table;
  const column = grid.table.column[local]! + (grid.from === 'inside' ? right : -right);
  const row = grid.table.row[local]! + up;
  if (column < 1 || column > columns || row < 1 || row > rows) return null;
  const found = at[(column - 1) * rows + row - 1]!;
  return found < 0 ? null : found + offset;
}
