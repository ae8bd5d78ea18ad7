import { panelAt } from '../surfaces/panel-at';
import type { SurfaceSet } from '../surfaces/surface-table';

/** Panels of a chain by its stretches, entry first: 'A C1 R1 to A C1 R9, A C2 R9 to A C2 R1'. */
export function chainWords(surfaces: SurfaceSet, panels: ArrayLike<number>): string {
  const records = Array.from(panels, (index) => panelAt(surfaces, index)).filter((record) => record !== null);
  const stretches: string[] = [];
  for (let from = 0; from < records.length; ) {
    const first = records[from]!;
    const next = records[from + 1];
    const across = next === undefined ? 0 : next.column - first.column;
    const up = next === undefined ? 0 : next.row - first.row;
    let to = from;
    if (Math.abs(across) + Math.abs(up) === 1) {
      const goesOn = (place: number) =>
        records[place]?.surface === first.surface &&
        records[place].column === first.column + across * (place - from) &&
        records[place].row === first.row + up * (place - from);
      while (goesOn(to + 1)) to += 1;
    }

    stretches.push(to === from ? first.name : `${first.name} to ${records[to]!.name}`);
    from = to + 1;
  }
  return stretches.join(', ');
}
