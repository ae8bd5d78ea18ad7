import type { Check } from '../../../calc/chapter';
import type { RateCell } from '../../../calc/rates/rate-table';

/** Cells that the same sentence stops. */
export interface StopGroup {
  readonly sentence: string;
  readonly cells: readonly RateCell[];
}

/** What stops the cells that do not fit, each sentence once, in the order of the table. */
export function groupStops(cells: readonly RateCell[], write: (stop: Check) => string): readonly StopGroup[] {
  const groups = new Map<string, RateCell[]>();
  for (const cell of cells) {
    if (cell.stop === null) continue;
    const sentence = write(cell.stop);
    const group = groups.get(sentence) ?? [];
    groups.set(sentence, group);
    group.push(cell);
  }
  return [...groups].map(([sentence, stopped]) => ({ sentence, cells: stopped }));
}
