import { useStore } from 'zustand/react';
import { createStore } from 'zustand/vanilla';
import type { PaperId } from '../../../sheets/pages/papers';
import type { Inks } from '../../../sheets/pages/place-drawing';

/** What is printed, and how: a choice of this tab, kept nowhere. */
export interface CrewChoice {
  /** null: the paper of the plan's system of lengths. */
  readonly paper: PaperId | null;
  readonly inks: Inks;
  /** Ids of parts that are left out. */
  readonly leftOut: ReadonlySet<string>;
}

const choice = createStore<CrewChoice>(() => ({ paper: null, inks: 'colour', leftOut: new Set() }));

export function useCrewChoice(): CrewChoice {
  return useStore(choice);
}

export function chooseCrew(change: Partial<CrewChoice>): void {
  choice.setState(change);
}

/** Puts a part into the set, or leaves it out. */
export function choosePart(id: string, isIn: boolean): void {
  choice.setState(({ leftOut }) => {
    const ids = new Set(leftOut);
    if (isIn) ids.delete(id);
    else ids.add(id);
    return { leftOut: ids };
  });
}
