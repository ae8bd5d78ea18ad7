import { createContext } from 'react';
import type { BenchStore } from './create-bench-store';

/** The bench that the components below belong to. */
export const BenchContext = createContext<BenchStore | null>(null);
