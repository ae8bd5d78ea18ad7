import type { SurfaceTable } from '../surfaces/surface-table';
import { fitsWithin } from './panels-within';

/** A chain of neighbours of one surface, as numbers of its panels, with what it draws and may carry. */
export interface Chain {
  readonly panels: readonly number[];
  readonly currentA: number;
  readonly limitA: number;
}

type Lattice = Pick<SurfaceTable, 'columns' | 'rows' | 'at' | 'column' | 'row'>;

function neighbours(lattice: Lattice, panel: number): number[] {
  const column = lattice.column[panel]! - 1;
  const row = lattice.row[panel]! - 1;
  const found: number[] = [];
  if (row > 0) found.push(lattice.at[column * lattice.rows + row - 1]!);
  if (row < lattice.rows - 1) found.push(lattice.at[column * lattice.rows + row + 1]!);
  if (column > 0) found.push(lattice.at[(column - 1) * lattice.rows + row]!);
  if (column < lattice.columns - 1) found.push(lattice.at[(column + 1) * lattice.rows + row]!);
  return found.filter((panel) => panel >= 0);
}

function joined(a: Chain, b: Chain, aEnd: number, bEnd: number): Chain {
  const left = a.panels.at(-1) === aEnd ? a.panels : a.panels.toReversed();
  const right = b.panels[0] === bEnd ? b.panels : b.panels.toReversed();
  return {
    panels: [...left, ...right],
    currentA: a.currentA + b.currentA,
    limitA: Math.min(a.limitA, b.limitA),
  };
}

/**
 * Joins pieces that holes and odd edges left over end to end with each other and with their neighbours, while the circuit
 * carries both. `loose` marks the pieces; chains that stand next to no piece stay as they are. The smallest piece goes first and
 * takes the fullest partner that fits.
 */
export function joinChains(lattice: Lattice, chains: readonly Chain[], loose: readonly boolean[]): readonly Chain[] {
  if (!loose.includes(true)) return chains;
  const kept: (Chain | undefined)[] = [...chains];
  const ofEnd = new Map<number, number>();
  const note = (chain: Chain, i: number) => {
    ofEnd.set(chain.panels[0]!, i);
    ofEnd.set(chain.panels.at(-1)!, i);
  };
  chains.forEach(note);
  const queue = chains.flatMap((_, i) => (loose[i] ? [i] : []));
  queue.sort((a, b) => chains[a]!.panels.length - chains[b]!.panels.length || a - b);
  for (let q = 0; q < queue.length; q++) {
    const i = queue[q]!;
    const piece = kept[i];
    if (piece === undefined) continue;
    let partner = -1;
    let ends: readonly [number, number] = [-1, -1];
    for (const end of new Set([piece.panels[0]!, piece.panels.at(-1)!])) {
      for (const beside of neighbours(lattice, end)) {
        const j = ofEnd.get(beside);
        const other = j === undefined || j === i ? undefined : kept[j];
        if (other === undefined || !fitsWithin(piece.currentA + other.currentA, Math.min(piece.limitA, other.limitA)))
          continue;
        if (partner < 0 || other.currentA > kept[partner]!.currentA) {
          partner = j!;
          ends = [end, beside];
        }
      }
    }
    if (partner < 0) continue;
    const whole = joined(piece, kept[partner]!, ends[0], ends[1]);
    for (const old of [piece, kept[partner]!]) {
      ofEnd.delete(old.panels[0]!);
      ofEnd.delete(old.panels.at(-1)!);
    }
    kept[partner] = undefined;
    kept[i] = whole;
    note(whole, i);
    queue.push(i);
  }
  return kept.filter((chain) => chain !== undefined);
}
