import type { Power } from '../../plan/power';
import type { PanelPower } from '../panels/panel-views';
import { type BranchCurrent, branchAmps, branchCurrent, noBranch } from './branch-current';
import { panelsWithin } from './panels-within';

/** What one panel type draws from a circuit at the lowest voltage of the supply's range; circuits are sized at full white. */
export interface PanelCurrent {
  readonly panelId: string;
  /** False where the catalogue has no such panel: its figures are 0. */
  readonly known: boolean;
  readonly watts: number;
  readonly branch: BranchCurrent;
  readonly currentA: number;
  /** Amperes that a circuit of it may carry: the usable share of the rating, or its own power chain if that is less. */
  readonly limitA: number;
  /** Panels of it alone on one circuit; 0: not one. */
  readonly panels: number;
}

/** Source of the usable share: NEC 210.20(A). */
export function panelCurrent(
  panelId: string,
  panels: readonly PanelPower[],
  circuit: Power['circuit'],
  lowestV: number,
  wattsOf: (panel: PanelPower) => number = (panel) => panel.power.fullWhiteW,
): PanelCurrent {
  const panel = panels.find((p) => p.id === panelId);
  const usableA = circuit.ratedA * circuit.usableShare;
  if (panel === undefined) {
    return { panelId, known: false, watts: 0, branch: noBranch, currentA: 0, limitA: usableA, panels: 0 };
  }
  const watts = wattsOf(panel);
  const branch = branchCurrent(watts, lowestV, panel.power.powerFactor);
  const currentA = branchAmps(branch);
  const limitA = Math.min(usableA, panel.power.chainA ?? usableA);
  return {
    panelId,
    known: true,
    watts,
    branch,
    currentA,
    limitA,
    panels: panelsWithin(limitA, currentA),
  };
}
