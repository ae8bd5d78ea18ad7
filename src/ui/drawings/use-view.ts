import { type RefObject, useCallback, useLayoutEffect, useState } from 'react';
import type { Box } from '../../sheets/drawing';
import { fitView, type Margins, moveView, type Size, type View, zoomView } from './view';

export interface ViewControl {
  /** Null until the window's size is known. */
  readonly view: View | null;
  /** Whether a person has moved or zoomed it since it was last fitted. */
  readonly byHand: boolean;
  readonly zoomBy: (factor: number, x?: number, y?: number) => void;
  readonly moveBy: (dx: number, dy: number) => void;
  readonly showAll: () => void;
}

interface Held {
  readonly view: View;
  readonly box: Box;
  readonly size: Size;
  /** Moved or zoomed by hand since it was last fitted. */
  readonly byHand: boolean;
}

/** Part of a drawing that its window shows. It is fitted until a person moves it, and again when another drawing comes. */
export function useView(box: Box, size: Size | null, margins: Margins, ref: RefObject<Element | null>): ViewControl {
  const [held, setHeld] = useState<Held | null>(null);
  let current = held;
  if (size !== null && (held === null || held.box !== box || held.size !== size)) {
    const keeps = held?.byHand === true && sameBox(held.box, box);
    const view = keeps ? moveView(held.view, 0, 0, box, size) : fitView(box, size, margins);
    current = { view, box, size, byHand: keeps };
    setHeld(current);
  }

  const change = useCallback(
    (next: (held: Held) => View) =>
      setHeld((before) => (before === null ? null : { ...before, view: next(before), byHand: true })),
    [],
  );
  const zoomBy = useCallback(
    (factor: number, x?: number, y?: number) =>
      change(({ view, box: of, size: on }) => {
        const least = fitView(of, on, margins).scale / 2;
        return moveView(zoomView(view, factor, x ?? on.width / 2, y ?? on.height / 2, least), 0, 0, of, on);
      }),
    [change, margins],
  );
  const moveBy = useCallback(
    (dx: number, dy: number) => change(({ view, box: of, size: on }) => moveView(view, dx, dy, of, on)),
    [change],
  );
  const showAll = useCallback(
    () =>
      setHeld((before) =>
        before === null ? null : { ...before, view: fitView(before.box, before.size, margins), byHand: false },
      ),
    [margins],
  );

  useLayoutEffect(() => {
    const element = ref.current;
    if (element === null) return;
    // React's own wheel listener is passive: it could not keep the page from scrolling.
    const onWheel = (event: Event) => {
      if (!(event instanceof WheelEvent)) return;
      event.preventDefault();
      const unit = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
      if (event.shiftKey && !event.ctrlKey) {
        moveBy(-(event.deltaX + event.deltaY) * unit, 0);
        return;
      }
      const { left, top } = element.getBoundingClientRect();
      const speed = event.ctrlKey ? 0.01 : 0.002;
      zoomBy(Math.exp(-event.deltaY * unit * speed), event.clientX - left, event.clientY - top);
    };
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => element.removeEventListener('wheel', onWheel);
  }, [ref, zoomBy, moveBy]);

  const shown = size === null ? null : current;
  return { view: shown?.view ?? null, byHand: shown?.byHand ?? false, zoomBy, moveBy, showAll };
}

function sameBox(a: Box, b: Box): boolean {
  return a.leftMm === b.leftMm && a.topMm === b.topMm && a.rightMm === b.rightMm && a.bottomMm === b.bottomMm;
}
