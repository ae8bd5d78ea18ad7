import type { SurfaceTable } from './surface-table';

/** A surface inside a sentence: 'wall A', 'ceiling B'. */
export function surfaceWords({ kind, letter }: Pick<SurfaceTable, 'kind' | 'letter'>): string {
  return `${kind} ${letter}`;
}
