/** What a drawing does with the panel under a press, null beside all of them: `onMark` is given while presses mark panels. */
export interface PanelPresses {
  readonly onSelect: (panel: number | null) => void;
  readonly onMark: ((panel: number) => void) | null;
}

/** Picks the panel; while presses mark, marks it too, and a press beside changes nothing. */
export function pressPanel(panel: number | null, { onSelect, onMark }: PanelPresses): void {
  if (onMark === null) onSelect(panel);
  else if (panel !== null) {
    onSelect(panel);
    onMark(panel);
  }
}
