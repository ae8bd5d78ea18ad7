import type { LegendEntry } from '../../sheets/drawing';

/** What each tint stands for. */
export function Legend({ entries }: { readonly entries: readonly LegendEntry[] }) {
  return entries.map((entry) => (
    <span key={entry.text} className="board-legend">
      <i className={`tint-box tint-${entry.tint}`} />
      {entry.text}
    </span>
  ));
}
