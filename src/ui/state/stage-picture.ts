import { useStore } from 'zustand/react';
import { createStore } from 'zustand/vanilla';

/** Whether test pictures stand on the model of the stage: a look of this tab, kept nowhere. */
const stagePicture = createStore<{ readonly isShown: boolean }>(() => ({ isShown: false }));

export function showStagePicture(isShown: boolean): void {
  stagePicture.setState({ isShown });
}

export function useStagePicture(): boolean {
  return useStore(stagePicture, (state) => state.isShown);
}
