import type { Path } from '../../plan/commands/path';
import { pathText } from '../../plan/commands/path-text';
import type { ChapterId, Check } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import type { SurfaceSet } from './surface-table';

/** Entries of the plan that name the surfaces they are for. */
export interface NamingList<Entry> {
  readonly id: string;
  readonly chapter: ChapterId;
  /** The list in the plan, and the field of an entry that names surfaces. */
  readonly path: Path;
  readonly field: string;
  readonly entries: readonly Entry[];
  /** An entry with the surfaces that are there: itself where all are, null where nothing is left to say. */
  readonly keep: (entry: Entry, isThere: (surfaceId: string) => boolean) => Entry | null;
  /** Ends in {measured}. */
  readonly sentence: string;
  /** What the history calls the list. */
  readonly called: string;
}

/** Entries that name no surface, or one that is not there. They rest: the fix drops what is idle. */
export function checkSurfaceNames<Entry>(surfaces: SurfaceSet, list: NamingList<Entry>): Check[] {
  const known = new Set(surfaces.surfaces.map(({ surfaceId }) => surfaceId));
  const kept = list.entries.map((entry) => list.keep(entry, (surfaceId) => known.has(surfaceId)));
  const idle = list.entries.flatMap((entry, i) => (kept[i] === entry ? [] : [i]));
  if (idle.length === 0) return [];
  return [
    {
      id: list.id,
      chapter: list.chapter,
      severity: 'watch',
      measured: idle.length,
      limit: 0,
      unit: 'count',
      where: idle.slice(0, 50).map((i) => ({ kind: 'field', name: pathText([...list.path, i, list.field]) })),
      sentence: list.sentence,
      fix: setFieldsFix('Drop what names no surface', list.called, [
        { path: list.path, value: kept.filter((entry) => entry !== null) },
      ]),
    },
  ];
}
