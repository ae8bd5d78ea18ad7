import type { Region } from './region';

/** Places of each part of a region that hangs together by shared edges, in the order of their first cells. */
export function connectedParts(region: Region): Int32Array[] {
  const { size, neighbours, places } = region;
  const seen = new Uint8Array(size);
  const parts: Int32Array[] = [];
  const stack: number[] = [];
  for (let first = 0; first < size; first++) {
    if (seen[first] === 1) continue;
    const part: number[] = [];
    seen[first] = 1;
    stack.push(first);
    while (stack.length > 0) {
      const cell = stack.pop()!;
      part.push(places[cell]!);
      for (let side = 0; side < 4; side++) {
        const next = neighbours[cell * 4 + side]!;
        if (next < 0 || seen[next] === 1) continue;
        seen[next] = 1;
        stack.push(next);
      }
    }
    parts.push(Int32Array.from(part).sort());
  }
  return parts;
}
