import { isSameAnchor } from '../../plan/commands/is-same-anchor';
import type { HeldChain, HeldNames } from '../../plan/held-names';
import type { Anchor } from '../../plan/primitives';
import { type AnchorGround, locateAnchor } from '../runs/locate-anchor';

/** A chain whose name is held, and where it was when that was given: panels numbered through all surfaces, -1: none stands there. */
export interface LocatedChain {
  readonly name: string;
  readonly first: number;
  readonly last: number;
  /** Port that the run goes back to; null without a return, and for circuits. */
  readonly returnName: string | null;
}

/** Held names, found again on the stage as it stands now. */
export interface LocatedNames {
  readonly processors: readonly { readonly number: number; readonly at: number }[];
  readonly ports: readonly LocatedChain[];
  readonly circuits: readonly LocatedChain[];
}

/**
 * Finds the panels by which names are held; a name that stands twice counts once. A port that a run goes back to is held behind the run's own, from its side: the
 * chain begins where the other one ends; the two are one here.
 */
export function locateNames({ processors, ports, circuits }: HeldNames, ground: AnchorGround): LocatedNames {
  const panelOf = (anchor: Anchor): number => {
    const located = locateAnchor(anchor, ground);
    return 'reason' in located ? -1 : ground.surfaces.offsets[located.surface]! + located.panel;
  };
  const locate = ({ name, first, last }: HeldChain): LocatedChain => {
    return { name, first: panelOf(first), last: panelOf(last), returnName: null };
  };
  const runs: LocatedChain[] = [];
  let before: HeldChain | null = null;
  for (const port of eachOnce(ports)) {
    if (before !== null && isReturnOf(port, before)) {
      runs.push({ ...runs.pop()!, returnName: port.name });
      before = null;
    } else {
      runs.push(locate(port));
      before = port;
    }
  }
  return {
    processors: processors.map(({ number, at }) => ({ number, at: panelOf(at) })),
    ports: runs,
    circuits: eachOnce(circuits).map(locate),
  };
}

function isReturnOf(port: HeldChain, run: HeldChain): boolean {
  return isSameAnchor(port.first, run.last) && isSameAnchor(port.last, run.first);
}

function eachOnce(chains: readonly HeldChain[]): readonly HeldChain[] {
  return [...new Map(chains.toReversed().map((chain) => [chain.name, chain])).values()].reverse();
}
