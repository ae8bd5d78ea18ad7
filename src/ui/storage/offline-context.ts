import { createContext } from 'react';
import type { Offline } from './create-offline';

/** How the page stands without a network; null where it is not kept at all, as while one builds it. */
export const OfflineContext = createContext<Offline | null>(null);
