import type { Check } from '../../../calc/chapter';
import type { RateCell } from '../../../calc/rates/rate-table';

/** Cells that the same sentence stands against. */
export interface StopGroup {
  readonly sentence: string;
  readonly cells: readonly RateCell[];
}

/** What stops the cells that do not fit, or is odd of the refresh of one that does: each sentence once, in the order of the table. */
export function groupStops(cells: readonly RateCell[], write: (reason: Check) => string): readonly StopGroup[] {
  const groups = new Map<string, RateCell[]>();
  for (const cell of cells) {
    const reason = cell.stop ?? cell.refresh;
    if (reason === null) continue;
    const sentence = write(reason);
    const group = groups.get(sentence) ?? [];
    groups.set(sentence, group);
    group.push(cell);
  }
  return [...groups].map(([sentence, stopped]) => ({ sentence, cells: stopped }));
}
