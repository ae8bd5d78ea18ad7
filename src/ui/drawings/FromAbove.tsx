import { useCallback, useMemo, useRef } from 'react';
import { panelAt } from '../../calc/surfaces/panel-at';
import { describePanel } from '../../sheets/describe-panel';
import { drawFromAbove } from '../../sheets/draw-from-above';
import type { Format } from '../../sheets/format';
import { markDarkFromAbove } from '../../sheets/mark-dark';
import { outlineFromAbove } from '../../sheets/outline-from-above';
import { panelFromAbove } from '../../sheets/panel-from-above';
import { type Picked, pickedPanels } from '../../sheets/picked-panels';
import type { StageParts } from '../../sheets/stage-parts';
import type { Tint } from '../../sheets/tint-panels';
import { DrawingView } from './DrawingView';
import { useSize } from './use-size';
import { useSteadyParts } from './use-steady-parts';

export interface FromAboveProps {
  readonly parts: StageParts;
  readonly tint: Tint;
  readonly format: Format;
  readonly picked: Picked | null;
  /** Number of the clicked panel through all surfaces; null for a click beside. */
  readonly onSelect: (panel: number | null) => void;
  /** Numbers of dark panels; null where none are shown. */
  readonly dark: ArrayLike<number> | null;
  readonly onMark: ((panel: number) => void) | null;
}

const margins = { left: 56, right: 56, top: 26, bottom: 22 };

/** The stage in plan. A click on a wall takes the panel of that column in the row that is selected, else the lowest. */
export function FromAbove(props: FromAboveProps) {
  const { tint, format } = props;
  const parts = useSteadyParts(props.parts);
  const windowRef = useRef<HTMLDivElement>(null);
  const size = useSize(windowRef);
  const drawing = useMemo(() => drawFromAbove(parts, tint, format), [parts, tint, format]);
  const picked = useMemo(() => pickedPanels(parts, props.picked), [parts, props.picked]);
  const dark = useMemo(
    () => (props.dark === null ? null : markDarkFromAbove(parts, Array.from(props.dark))),
    [parts, props.dark],
  );
  const outlineOf = useCallback((panels: readonly number[]) => outlineFromAbove(parts, panels), [parts]);
  const row = panelAt(parts.surfaces, picked[0] ?? -1)?.row ?? 1;
  return (
    <DrawingView
      drawing={drawing}
      size={size}
      windowRef={windowRef}
      margins={margins}
      lengths={parts.lengths}
      format={format}
      panelUnder={(xMm, yMm) => panelFromAbove(parts, xMm, -yMm, row)}
      outlineOf={outlineOf}
      describe={(panel) => describePanel(parts, panel)}
      neighbour={(panel, right, up) => neighbour(parts, panel, right, up)}
      first={0}
      picked={picked}
      onSelect={props.onSelect}
      dark={dark}
      onMark={props.onMark}
    />
  );
}

/** Along a wall by columns, up and down by rows: in plan they lie over each other. */
function neighbour({ surfaces }: StageParts, panel: number, right: number, up: number): number | null {
  const record = panelAt(surfaces, panel);
  if (record === null) return null;
  const { surface } = record;
  const column = record.column + (surface.kind === 'ceiling' ? -right : right);
  const row = record.row + up;
  if (column < 1 || column > surface.columns || row < 1 || row > surface.rows) return null;
  const found = surface.at[(column - 1) * surface.rows + row - 1]!;
  return found < 0 ? null : found + surfaces.offsets[surfaces.surfaces.indexOf(surface)]!;
}
