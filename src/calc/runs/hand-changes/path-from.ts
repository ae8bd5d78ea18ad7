import type { WiringGrid } from '../wiring-grid';

/** Steps of the search for a way through a run; beyond them a run counts as having none. */
const mostSteps = 5000;

/** A way through all the given places from neighbour to neighbour that begins at one of them; null where none was found. */
export function pathFrom(
  { rows }: Pick<WiringGrid, 'rows'>,
  places: readonly number[],
  start: number,
): number[] | null {
  const left = new Set(places);
  const path = [start];
  left.delete(start);
  let steps = 0;
  const onward = (place: number) => {
    const row = place % rows;
    const around = [place + rows, place - rows];
    if (row > 0) around.push(place - 1);
    if (row + 1 < rows) around.push(place + 1);
    return around.filter((next) => left.has(next));
  };
  const walk = (place: number): boolean => {
    if (left.size === 0) return true;
    if (++steps > mostSteps) return false;
    // The neighbour with the fewest ways on goes first: it is the one that would be left behind.
    const choices = onward(place).map((next) => ({ next, ways: onward(next).length }));
    for (const { next } of choices.sort((a, b) => a.ways - b.ways || a.next - b.next)) {
      left.delete(next);
      path.push(next);
      if (walk(next)) return true;
      path.pop();
      left.add(next);
    }
    return false;
  };
  return walk(start) ? path : null;
}
