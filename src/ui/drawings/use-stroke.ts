import { useRef, useState } from 'react';

export interface StrokeControl {
  /** Panels that the drag has come over so far, or that lie in its rectangle; of the keyboard those that are held. */
  readonly panels: readonly number[];
  /** The panel from which the keyboard goes on; null while none is held. */
  readonly held: number | null;
  draw(x: number, y: number, phase: 'begins' | 'goes' | 'ends' | 'breaks'): void;
  /** Holds the picked panel, or goes there from the one that is held. */
  press(): void;
  letGo(): void;
}

/** What a stroke is for: from neighbour to neighbour, told once it has two panels, or all that lie between its two ends. */
export interface StrokeTask {
  readonly onStroke: (panels: readonly number[]) => void;
  /** Panels of the rectangle between two; left out: those on the way. */
  readonly between?: (one: number, other: number) => readonly number[];
}

const nothing: readonly number[] = [];

/** A stroke over panels, by drag or by two presses of a key. */
export function useStroke(
  selected: number | null,
  panelAtPixel: (x: number, y: number) => number | null,
  task: StrokeTask | null,
): StrokeControl {
  const [panels, setPanels] = useState(nothing);
  const [held, setHeld] = useState<number | null>(null);
  /** What was drawn so far: moves come faster than the page is painted. */
  const drawn = useRef(nothing);
  const start = useRef<number | null>(null);
  const between = task?.between;

  function keep(next: readonly number[]): void {
    drawn.current = next;
    setPanels(next);
  }
  /** The panels drawn so far and the one that the drag has come to: one that it comes back to takes back what was drawn since. */
  function goTo(under: number | null): readonly number[] {
    const before = drawn.current;
    if (under === null || start.current === null) return before;
    if (between !== undefined) return between(start.current, under);
    if (before.at(-1) === under) return before;
    const at = before.indexOf(under);
    return at >= 0 ? before.slice(0, at + 1) : [...before, under];
  }
  const heldPanels = (from: number) => between?.(from, selected ?? from) ?? [from];

  return {
    panels: task === null ? nothing : held === null ? panels : heldPanels(held),
    held: task === null ? null : held,
    draw(x, y, phase) {
      const under = panelAtPixel(x, y);
      if (phase === 'begins') {
        setHeld(null);
        start.current = under;
        keep(under === null ? nothing : [under]);
        return;
      }
      const all = phase === 'breaks' ? nothing : goTo(under);
      keep(phase === 'goes' ? all : nothing);
      if (phase === 'ends' && all.length > (between === undefined ? 1 : 0)) task?.onStroke(all);
    },
    press() {
      if (held === null) setHeld(selected);
      else if (between !== undefined) {
        task?.onStroke(heldPanels(held));
        setHeld(null);
      } else if (held === selected) setHeld(null);
      else if (selected !== null) {
        task?.onStroke([held, selected]);
        setHeld(null);
      }
    },
    letGo: () => setHeld(null),
  };
}
