import { useContext } from 'react';
import { useStore } from 'zustand/react';
import { BenchContext } from './bench-context';
import type { BenchActions, BenchState } from './bench-state';
import type { BenchStore } from './create-bench-store';

/** The bench itself: for subscriptions outside React's rendering, such as the buffers of the 3D view. */
export function useBenchStore(): BenchStore {
  const bench = useContext(BenchContext);
  if (!bench) throw new Error('a component of the bench stands outside of it');
  return bench;
}

/** One narrow part of the state. The selector gives what the state holds or a primitive, never a fresh object. */
export function useBench<Part>(selector: (state: BenchState) => Part): Part {
  return useStore(useBenchStore().store, selector);
}

/** What can be done; the same object for the life of the bench. */
export function useActions(): BenchActions {
  return useBenchStore().actions;
}
