import type { Chains } from './chains';

/** Reads chains off the links of every cell: two a cell, the first filled first, -1 for none. Links must not close a ring. */
export function chainsOfLinks(links: Int32Array): Chains {
  const size = links.length / 2;
  const order = new Int32Array(size);
  const start = [0];
  const seen = new Uint8Array(size);
  let written = 0;
  for (let cell = 0; cell < size; cell++) {
    if (seen[cell] === 1 || links[cell * 2 + 1]! >= 0) continue;
    let before = -1;
    let at = cell;
    while (at >= 0) {
      seen[at] = 1;
      order[written++] = at;
      const next = links[at * 2] === before ? links[at * 2 + 1]! : links[at * 2]!;
      before = at;
      at = next;
    }
    start.push(written);
  }
  return { order, start: Int32Array.from(start) };
}
