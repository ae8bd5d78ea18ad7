import type { Change } from '../../../calc/compare/change';

/** The name by which the bench finds what changed, as the new state calls it; null for what is not there, or is no thing on the stage. */
export function changePlace({ kind, what, name }: Pick<Change, 'kind' | 'what' | 'name'>): string | null {
  if (kind === 'removed') return null;
  switch (what) {
    case 'panel':
    case 'port':
    case 'circuit':
    case 'node':
      return name;
    case 'trunk':
    case 'processor':
      return `${what} ${name}`;
    case 'figure':
    case 'check':
    case 'item':
      return null;
  }
}
