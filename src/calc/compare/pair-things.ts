import type { Thing } from './thing';

/** Which thing of one plan is which of the other, by their places in the lists; -1 where it has no partner. */
export interface Pairing {
  /** By place in the old list. */
  readonly newOf: Int32Array;
  /** By place in the new list. */
  readonly oldOf: Int32Array;
}

/** What is alike in two partners; null: a thing that has no partner by this key. */
type KeyOf = (thing: Thing) => string | null;

const everything = ({ name, content, detail }: Thing) => [name, content, detail].join('\n');

const keys: readonly KeyOf[] = [
  everything,
  ({ anchor = null }) => anchor,
  ({ name }) => name,
  ({ content }) => content,
];

/**
 * Pairs what is alike in everything, then what the document holds at the same place, then what has the same name, then what
 * has the same content. Where several would do, each takes one in turn, by what they are: the order of the lists and which plan is the old one make no difference.
 */
export function pairThings(before: readonly Thing[], after: readonly Thing[]): Pairing {
  const newOf = new Int32Array(before.length).fill(-1);
  const oldOf = new Int32Array(after.length).fill(-1);
  for (const keyOf of keys) {
    const old = unpaired(before, newOf, keyOf);
    const now = unpaired(after, oldOf, keyOf);
    for (let o = 0, n = 0; o < old.length && n < now.length; ) {
      const order = compareText(old[o]!.key, now[n]!.key);
      if (order === 0) {
        newOf[old[o]!.place] = now[n]!.place;
        oldOf[now[n]!.place] = old[o]!.place;
      }
      if (order <= 0) o += 1;
      if (order >= 0) n += 1;
    }
  }
  return { newOf, oldOf };
}

interface Waiting {
  readonly place: number;
  readonly key: string;
  readonly everything: string;
}

/** What has no partner yet, sorted by its key and within it by everything else. */
function unpaired(things: readonly Thing[], partnerOf: Int32Array, keyOf: KeyOf): Waiting[] {
  const waiting: Waiting[] = [];
  things.forEach((thing, place) => {
    if (partnerOf[place]! >= 0) return;
    const key = keyOf(thing);
    if (key !== null) waiting.push({ place, key, everything: everything(thing) });
  });
  return waiting.sort((a, b) => compareText(a.key, b.key) || compareText(a.everything, b.everything));
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : Number(a > b);
}
