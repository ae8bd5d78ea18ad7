import type { SurfaceTable } from '../surfaces/surface-table';
import { cutRows, type RowLoads } from './cut-rows';
import { type Chain, joinChains } from './join-chains';
import type { PanelCurrent } from './panel-current';
import { rowLoads } from './row-loads';
import { splitColumns } from './split-columns';
import { traceBlock } from './trace-block';

/** Columns of one level: what each draws, and where stretches of columns that touch their neighbour begin. */
function levelColumns(table: SurfaceTable, currents: readonly PanelCurrent[], fromRow: number, toRow: number) {
  const columnA = new Float64Array(table.columns);
  const stretches: number[] = [];
  for (let column = 0; column < table.columns; column++) {
    let touches = false;
    for (let row = fromRow; row < toRow; row++) {
      const panel = table.at[column * table.rows + row]!;
      if (panel < 0) continue;
      columnA[column] = columnA[column]! + currents[table.type[panel]!]!.currentA;
      touches ||= column > 0 && table.at[(column - 1) * table.rows + row]! >= 0;
    }
    if (!touches) stretches.push(column);
  }
  return { columnA, stretches };
}

/** Entry first: the lower end of a chain, the left one where both are as high. */
function fromItsEntry(table: SurfaceTable, chain: Chain): Chain {
  const first = chain.panels[0]!;
  const last = chain.panels.at(-1)!;
  const rise = table.row[last]! - table.row[first]! || table.column[last]! - table.column[first]!;
  return rise < 0 ? { ...chain, panels: chain.panels.toReversed() } : chain;
}

function leftmostColumn(table: SurfaceTable, chain: Chain): number {
  let left = Number.POSITIVE_INFINITY;
  for (const panel of chain.panels) left = Math.min(left, table.column[panel]!);
  return left;
}

/** Chains of one cut: circuits take whole columns of each level, as many side by side as fit, from the left. */
function layFromLeft(
  table: SurfaceTable,
  currents: readonly PanelCurrent[],
  rows: RowLoads,
  levels: readonly number[],
): { chains: readonly Chain[]; hasPieces: boolean } {
  const chains: Chain[] = [];
  const loose: boolean[] = [];
  levels.forEach((fromRow, i) => {
    const toRow = levels[i + 1] ?? table.rows;
    const limitA = rows.limitA.subarray(fromRow, toRow).reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
    const { columnA, stretches } = levelColumns(table, currents, fromRow, toRow);
    const starts = stretches.flatMap((from, s) =>
      splitColumns(columnA, from, stretches[s + 1] ?? table.columns, limitA),
    );
    starts.forEach((fromColumn, b) => {
      const block = { fromColumn, toColumn: starts[b + 1] ?? table.columns, fromRow, toRow };
      const pieces = traceBlock(table, block);
      for (const panels of pieces) {
        let currentA = 0;
        for (const panel of panels) currentA += currents[table.type[panel]!]!.currentA;
        chains.push({ panels, currentA, limitA });
        loose.push(pieces.length > 1);
      }
    });
  });
  return { chains: joinChains(table, chains, loose), hasPieces: loose.includes(true) };
}

/** The same panels, seen from the other side. */
function seenFromBehind(table: SurfaceTable): SurfaceTable {
  const { columns, rows } = table;
  return {
    ...table,
    column: table.column.map((column) => columns + 1 - column),
    at: table.at.map((_, i) => table.at[(columns - 1 - Math.floor(i / rows)) * rows + (i % rows)]!),
  };
}

/** Chains of one cut, in order. Pieces that holes leave are joined from either side, and the side with fewer circuits is taken. */
function layLevels(
  table: SurfaceTable,
  currents: readonly PanelCurrent[],
  rows: RowLoads,
  levels: readonly number[],
): readonly Chain[] {
  const left = layFromLeft(table, currents, rows, levels);
  let { chains } = left;
  if (left.hasPieces) {
    const right = layFromLeft(seenFromBehind(table), currents, rows, levels);
    if (right.chains.length < chains.length) chains = right.chains;
  }
  return chains
    .map((chain) => ({ chain: fromItsEntry(table, chain), left: leftmostColumn(table, chain) }))
    .sort((a, b) => a.left - b.left || table.row[a.chain.panels[0]!]! - table.row[b.chain.panels[0]!]!)
    .map(({ chain }) => chain);
}

/** Two ways of laying the circuits of one surface. */
export interface SurfaceWays {
  /** The fewest levels: whole columns where they fit. */
  readonly simple: readonly Chain[];
  /** The fewest circuits by whole columns of levels; computed when it is asked for, `simple` itself where the cut is the same. */
  readonly dense: () => readonly Chain[];
}

/**
 * Circuits of one surface as chains of panel numbers of that surface, entry first, ordered from the left, lowest level first.
 * Circuits take whole columns, as many side by side as fit, walked back and forth; where a column draws more than a circuit
 * carries, the rows are cut into levels. Holes and odd edges leave pieces, which are joined where that fits. `currents` has one
 * entry a panel type of the table. A panel that no circuit carries is a chain of its own.
 */
export function layCircuits(table: SurfaceTable, currents: readonly PanelCurrent[]): SurfaceWays {
  const rows = rowLoads(table, currents);
  const fewestLevels = cutRows(rows, 'levels');
  const simple = layLevels(table, currents, rows, fewestLevels);
  let laid: readonly Chain[] | null = null;
  const dense = () => {
    if (laid === null) {
      const fewestCircuits = cutRows(rows, 'circuits');
      const isSame = fewestCircuits.join() === fewestLevels.join();
      laid = isSame ? simple : layLevels(table, currents, rows, fewestCircuits);
    }
    return laid;
  };
  return { simple, dense };
}
