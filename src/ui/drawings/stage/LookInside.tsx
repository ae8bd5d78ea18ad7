import { type RefObject, useEffect } from 'react';
import type { OrbitHandle } from './Orbit';

/** Steps inside once it appears: the lit side of a ring is seen from there alone. */
export function LookInside({ orbit }: { readonly orbit: RefObject<OrbitHandle | null> }) {
  useEffect(() => orbit.current?.goTo('eye'), [orbit]);
  return null;
}
