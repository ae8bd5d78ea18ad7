import { type PointerEvent, useEffect, useMemo, useRef } from 'react';
import type { ViewControl } from './use-view';

/** A press that moves less than this is a click. */
const dragPx = 4;

interface Spot {
  x: number;
  y: number;
}

interface PointerTasks extends Pick<ViewControl, 'zoomBy' | 'moveBy'> {
  readonly onClick: (x: number, y: number) => void;
  /** Given while a drag with the first button draws instead of moving the drawing. */
  readonly onStroke?: ((spot: Spot, phase: 'begins' | 'goes' | 'ends' | 'breaks') => void) | null;
  /** At most once a frame; null when the pointer leaves or is busy with moving. */
  readonly onHover: (spot: Spot | null) => void;
}

/** Drag moves the drawing or draws in it, two fingers zoom it about their middle, a press without a drag is a click. */
export function usePointer(tasks: PointerTasks) {
  const latest = useRef(tasks);
  useEffect(() => {
    latest.current = tasks;
  });
  const frame = useRef(0);
  useEffect(() => () => cancelAnimationFrame(frame.current), []);

  return useMemo(() => {
    const down = new Map<number, Spot>();
    let dragged = false;
    let draws = false;
    let mayDraw = false;
    let hovered: Spot | null = null;
    const hover = (spot: Spot | null) => {
      hovered = spot;
      if (frame.current !== 0) return;
      frame.current = requestAnimationFrame(() => {
        frame.current = 0;
        latest.current.onHover(hovered);
      });
    };
    const spotOf = (event: PointerEvent): Spot => {
      const { left, top } = event.currentTarget.getBoundingClientRect();
      return { x: event.clientX - left, y: event.clientY - top };
    };
    const end = (event: PointerEvent, isClick: boolean) => {
      if (!down.delete(event.pointerId)) return;
      if (draws) {
        draws = false;
        latest.current.onStroke?.(spotOf(event), isClick ? 'ends' : 'breaks');
        return;
      }
      if (down.size === 0 && isClick && !dragged) {
        const { x, y } = spotOf(event);
        latest.current.onClick(x, y);
      }
    };
    return {
      onPointerDown: (event: PointerEvent) => {
        if (event.button !== 0 && event.button !== 1) return;
        if (down.size === 0) dragged = false;
        down.set(event.pointerId, spotOf(event));
        if (draws) {
          draws = false;
          latest.current.onStroke?.(spotOf(event), 'breaks');
        }
        mayDraw = down.size === 1 && event.button === 0 && (latest.current.onStroke ?? null) !== null;
      },
      onPointerMove: (event: PointerEvent) => {
        const now = spotOf(event);
        const before = down.get(event.pointerId);
        if (before === undefined) {
          if (event.pointerType !== 'touch') hover(now);
          return;
        }
        const [dx, dy] = [now.x - before.x, now.y - before.y];
        if (!dragged && down.size === 1 && Math.hypot(dx, dy) < dragPx) return;
        if (!dragged) {
          dragged = true;
          event.currentTarget.setPointerCapture(event.pointerId);
          hover(null);
          if (mayDraw) {
            draws = true;
            latest.current.onStroke?.(before, 'begins');
          }
        }
        if (draws) {
          down.set(event.pointerId, now);
          latest.current.onStroke?.(now, 'goes');
          return;
        }
        const other = [...down].find(([id]) => id !== event.pointerId)?.[1];
        down.set(event.pointerId, now);
        if (other === undefined) {
          latest.current.moveBy(dx, dy);
          return;
        }
        const wide = Math.hypot(before.x - other.x, before.y - other.y) || 1;
        latest.current.moveBy(dx / 2, dy / 2);
        latest.current.zoomBy(
          Math.hypot(now.x - other.x, now.y - other.y) / wide,
          (now.x + other.x) / 2,
          (now.y + other.y) / 2,
        );
      },
      onPointerUp: (event: PointerEvent) => end(event, true),
      onPointerCancel: (event: PointerEvent) => end(event, false),
      onPointerLeave: () => hover(null),
    };
  }, []);
}
