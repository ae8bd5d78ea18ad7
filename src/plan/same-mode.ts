import type { Mode } from './picture';

/** True where two modes ask the same of every budget: equal rates as fractions, depth and pictures. */
export function sameMode(a: Mode, b: Mode): boolean {
  return (
    a.depthBits === b.depthBits &&
    a.pictures === b.pictures &&
    a.rate.frames * b.rate.seconds === b.rate.frames * a.rate.seconds
  );
}
