import { useState } from 'react';

export interface StrokeControl {
  /** Panels that the drag has come over so far; of the keyboard the one that is held. */
  readonly panels: readonly number[];
  /** The panel from which the keyboard goes on; null while none is held. */
  readonly held: number | null;
  draw(x: number, y: number, phase: 'begins' | 'goes' | 'ends' | 'breaks'): void;
  /** Holds the picked panel, or goes there from the one that is held. */
  press(): void;
  letGo(): void;
}

const nothing: readonly number[] = [];

/** A stroke over panels, by drag or by two presses of a key; told once it ends on another panel than it began. */
export function useStroke(
  selected: number | null,
  panelAtPixel: (x: number, y: number) => number | null,
  onStroke: ((panels: readonly number[]) => void) | null,
): StrokeControl {
  const [panels, setPanels] = useState(nothing);
  const [held, setHeld] = useState<number | null>(null);
  const isOff = onStroke === null;
  return {
    panels: isOff ? nothing : held === null ? panels : [held],
    held: isOff ? null : held,
    draw(x, y, phase) {
      const under = panelAtPixel(x, y);
      if (phase === 'begins') {
        setHeld(null);
        setPanels(under === null ? nothing : [under]);
      } else if (phase === 'goes') {
        // A panel that the stroke comes back to takes back what was drawn since.
        setPanels((drawn) => {
          if (under === null || drawn.length === 0 || drawn.at(-1) === under) return drawn;
          const at = drawn.indexOf(under);
          return at >= 0 ? drawn.slice(0, at + 1) : [...drawn, under];
        });
      } else {
        if (phase === 'ends' && panels.length > 1) onStroke?.(panels);
        setPanels(nothing);
      }
    },
    press() {
      if (held === null || held === selected) setHeld(held === null ? selected : null);
      else if (selected !== null) {
        onStroke?.([held, selected]);
        setHeld(null);
      }
    },
    letGo: () => setHeld(null),
  };
}
