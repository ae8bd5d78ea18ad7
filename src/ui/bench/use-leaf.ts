import { useEffect, useRef, useState } from 'react';
import { useBench } from '../state/use-bench';

/** Leaves of a narrow screen: what is looked for and in hand, the page, the drawing. */
export type Leaf = 'hand' | 'book' | 'drawing';

/** Which leaf a narrow screen shows: it opens on what is looked for; a page that is turned, and a field that asks for the focus, bring the book. */
export function useLeaf(): readonly [leaf: Leaf, setLeaf: (leaf: Leaf) => void] {
  const page = useBench((state) => state.page);
  const asked = useBench((state) => state.asked);
  const [leaf, setLeaf] = useState<Leaf>('hand');
  const before = useRef({ page, asked });
  useEffect(() => {
    const last = before.current;
    before.current = { page, asked };
    if (last.page !== page || (asked !== null && last.asked !== asked)) setLeaf('book');
  }, [page, asked]);
  return [leaf, setLeaf];
}
