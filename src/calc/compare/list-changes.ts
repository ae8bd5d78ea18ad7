import type { Change, Changed, Said } from './change';
import type { Pairing } from './pair-things';
import type { ThingList } from './thing';

/**
 * What became of the things of one kind: what was removed in the order of the old list, then the rest in that of the new one.
 * Of what moved or changed only that is said which is otherwise.
 */
export function listChanges(what: Changed, before: ThingList, after: ThingList, { newOf, oldOf }: Pairing): Change[] {
  const changes: Change[] = [];
  before.things.forEach(({ name }, place) => {
    if (newOf[place]! < 0) changes.push({ kind: 'removed', what, name, before: sayAll(before, place), after: null });
  });
  after.things.forEach((now, place) => {
    const { name } = now;
    const old = oldOf[place]!;
    const was = before.things[old];
    const sayBoth = (say: (list: ThingList, place: number) => Said | null) => {
      return { before: say(before, old), after: say(after, place) };
    };
    if (was === undefined) changes.push({ kind: 'added', what, name, before: null, after: sayAll(after, place) });
    else if (was.name !== name) changes.push({ kind: 'renamed', what, name, before: [was.name], after: [name] });
    else if (was.content !== now.content) {
      changes.push({ kind: 'moved', what, name, ...sayBoth(was.detail === now.detail ? sayContent : sayAll) });
    } else if (was.detail !== now.detail) changes.push({ kind: 'changed', what, name, ...sayBoth(sayDetail) });
  });
  return changes;
}

const sayContent = (list: ThingList, place: number): Said => list.sayContent(place);

function sayDetail(list: ThingList, place: number): Said | null {
  const said = list.sayDetail(place);
  return said.length === 0 ? null : said;
}

function sayAll(list: ThingList, place: number): Said {
  const detail = list.sayDetail(place);
  const content = list.sayContent(place);
  return content.length === 0 || detail.length === 0 ? [...content, ...detail] : [...content, ', ', ...detail];
}
