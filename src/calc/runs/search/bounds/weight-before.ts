import type { Region } from '../region';

/**
 * For every cell the least weight that a run from an entry in reach has gathered before it comes there (0 in reach itself,
 * Infinity where none leads).
 */
export function weightBefore(region: Region, weight: ArrayLike<number>): Float64Array {
  const { size, neighbours, outOfReach } = region;
  const before = new Float64Array(size).fill(Number.POSITIVE_INFINITY);
  let wave: number[] = [];
  for (let cell = 0; cell < size; cell++) {
    if (outOfReach[cell] === 1) continue;
    before[cell] = 0;
    wave.push(cell);
  }
  // Waves that put right what they find too heavy: panels of few sizes need few of them.
  while (wave.length > 0) {
    const next: number[] = [];
    for (const cell of wave) {
      const after = before[cell]! + weight[cell]!;
      for (let side = 0; side < 4; side++) {
        const to = neighbours[cell * 4 + side]!;
        if (to < 0 || before[to]! <= after) continue;
        before[to] = after;
        next.push(to);
      }
    }
    wave = next;
  }
  return before;
}
