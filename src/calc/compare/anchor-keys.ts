import type { AnchorGround } from '../runs/locate-anchor';

/**
 * By panel number, the place of the document that it stands for: column of its segment and row, or place on its ceiling's
 * lattice. It stays the same whatever comes or goes beside the panel; null where it stands for none.
 */
export function anchorKeys({ surfaces, walls, ceilings }: AnchorGround): readonly (string | null)[] {
  return surfaces.surfaces.flatMap(({ surfaceId, kind, count, columns, column, row }) => {
    const ofColumn =
      kind === 'wall'
        ? columnsOfPath(walls.find(({ id }) => id === surfaceId)?.path ?? [])
        : columnsOfLattice(
            ceilings.ceilings.find(({ ceilingId }) => ceilingId === surfaceId)?.firstLatticeColumn,
            columns,
          );
    const firstRow = ceilings.ceilings.find(({ ceilingId }) => ceilingId === surfaceId)?.firstLatticeRow ?? 1;
    return Array.from({ length: count }, (_, panel) => {
      const place = ofColumn[column[panel]! - 1];
      return place === undefined ? null : `${surfaceId} ${place} ${firstRow + row[panel]! - 1}`;
    });
  });
}

function columnsOfPath(path: readonly { readonly id: string; readonly columns: number }[]): readonly string[] {
  return path.flatMap(({ id, columns }) => Array.from({ length: columns }, (_, column) => `${id} ${column + 1}`));
}

function columnsOfLattice(first: number | undefined, columns: number): readonly string[] {
  return first === undefined ? [] : Array.from({ length: columns }, (_, column) => `${first + column}`);
}
