import { useRef } from 'react';

/** The last object for as long as all its properties are the same: a drawing is not made anew by an edit that it does not show. */
export function useSteadyParts<T extends object>(parts: T): T {
  const steady = useRef(parts);
  if (!isSame(steady.current, parts)) steady.current = parts;
  return steady.current;
}

function isSame<T extends object>(a: T, b: T): boolean {
  const keys = Object.keys(a) as (keyof T)[];
  return a === b || (keys.length === Object.keys(b).length && keys.every((key) => Object.is(a[key], b[key])));
}
