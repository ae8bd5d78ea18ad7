import { createContext, useContext } from 'react';

/** Says something to the person that belongs to no field: why a repair was refused, what was saved. */
export type Say = (text: string) => void;

export const NoticeContext = createContext<Say>(() => undefined);

export function useSay(): Say {
  return useContext(NoticeContext);
}

/** What was last said, until it goes. */
export const SaidContext = createContext<string | null>(null);

export function useNotice(): string | null {
  return useContext(SaidContext);
}
