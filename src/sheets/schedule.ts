import type { Unit } from '../units/unit';

/** What stands in a cell: a figure in its column's unit, words, or null where there is nothing to say. */
export type Cell = number | string | null;

export interface ScheduleColumn {
  readonly key: string;
  readonly title: string;
  /** null: words. */
  readonly unit: Unit | null;
  readonly align: 'start' | 'end';
}

/** A table of the plan as plain data, for the screen, files and print. A row is made only when it is asked for. */
export interface Schedule {
  readonly id: string;
  readonly title: string;
  readonly columns: readonly ScheduleColumn[];
  readonly count: number;
  /** Cells in the order of `columns`; index from 0 to count - 1. */
  readonly row: (index: number) => readonly Cell[];
  /** Number of the panel that a row leads to, through all surfaces; null where it leads to none. */
  readonly panelOf: (index: number) => number | null;
  /** Sums under the table, in the order of `columns`. */
  readonly totals: readonly Cell[] | null;
}
