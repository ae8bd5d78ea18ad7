import { useEffect, useRef, useState } from 'react';
import { useBench } from '../state/use-bench';

/** Leaves of a narrow screen: what is looked for and in hand, the page, the drawing. */
export type Leaf = 'hand' | 'book' | 'drawing';

/** Which leaf a narrow screen shows: it opens on what is looked for, and a page that is turned brings the book. */
export function useLeaf(): readonly [leaf: Leaf, setLeaf: (leaf: Leaf) => void] {
  const page = useBench((state) => state.page);
  const [leaf, setLeaf] = useState<Leaf>('hand');
  const shown = useRef(page);
  useEffect(() => {
    if (shown.current === page) return;
    shown.current = page;
    setLeaf('book');
  }, [page]);
  return [leaf, setLeaf];
}
