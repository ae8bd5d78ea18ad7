import { useContext } from 'react';
import { useStore } from 'zustand/react';
import type { Desk } from './create-desk';
import { DeskContext } from './desk-context';
import type { DeskActions, DeskState } from './desk-state';

export function useDeskStore(): Desk {
  const desk = useContext(DeskContext);
  if (!desk) throw new Error('a component of the desk stands outside of it');
  return desk;
}

export function useDesk<Part>(selector: (state: DeskState) => Part): Part {
  return useStore(useDeskStore().store, selector);
}

export function useDeskActions(): DeskActions {
  return useDeskStore().actions;
}
