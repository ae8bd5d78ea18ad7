import { createContext } from 'react';
import type { Desk } from './create-desk';

/** The desk on which the bench stands. */
export const DeskContext = createContext<Desk | null>(null);
