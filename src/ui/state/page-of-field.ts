import type { PageId } from './pages';

/** Pages that own the givens, by the first keys of their path in the plan; the longest that matches wins. */
const owners: readonly (readonly [start: string, page: PageId])[] = [
  ['catalogue', 'panels'],
  ['walls', 'walls'],
  ['alternatives', 'walls'],
  ['ceilings', 'ceilings'],
  ['picture', 'picture'],
  ['signal', 'runs'],
  ['signal.processorId', 'zones'],
  ['signal.nodeId', 'nodes'],
  ['signal.bySurface', 'zones'],
  ['feed', 'nodes'],
  ['feed.timing', 'links'],
  ['feed.containerId', 'links'],
  ['feed.linkId', 'links'],
  ['delay', 'nodes'],
  ['sync', 'nodes'],
  ['addresses', 'nodes'],
  ['existingWiring', 'runs'],
  ['handChanges', 'runs'],
  ['power', 'power'],
  ['heat', 'heat'],
  ['masses', 'masses'],
  ['materials', 'materials'],
  ['wish', 'wish'],
  ['log', 'log'],
  ['names', 'revisions'],
  ['revisions', 'revisions'],
];

/** A surface is fed by its node, but for the link. */
const surfaceLink = /^feed\.bySurface\[\d+\]\.linkId$/;

function startsWithKey(path: string, start: string): boolean {
  if (!path.startsWith(start)) return false;
  const next = path[start.length];
  return next === undefined || next === '.' || next === '[';
}

/** The page that owns the field at a path such as 'walls[0].path[2].columns'; null where none does (name, revision, note). */
export function pageOfField(path: string): PageId | null {
  if (surfaceLink.test(path)) return 'links';
  let found: readonly [string, PageId] | undefined;
  for (const owner of owners) {
    if (startsWithKey(path, owner[0]) && (!found || owner[0].length > found[0].length)) found = owner;
  }
  return found?.[1] ?? null;
}
