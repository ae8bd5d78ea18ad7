import type { CableKind } from '../../plan/cable';
import type { LinkedItem } from '../item-link';

/** Kinds of cable that carry labels, in the order of the way from processor and distro to the panels. */
export const labelledKinds = ['trunk', 'home-run', 'return', 'data-jumper', 'circuit', 'power-jumper'] as const;
export type LabelledKind = (typeof labelledKinds)[number];

/** What labels of a kind are called, as people read it, and which cable of the catalogue they stand on. */
export const kindWords: Readonly<Record<LabelledKind, { readonly title: string; readonly cable: CableKind }>> = {
  trunk: { title: 'Trunk', cable: 'trunk' },
  'home-run': { title: 'Home run', cable: 'home-run' },
  return: { title: 'Return', cable: 'home-run' },
  'data-jumper': { title: 'Data jumpers', cable: 'data-jumper' },
  circuit: { title: 'Circuit', cable: 'circuit' },
  'power-jumper': { title: 'Power jumpers', cable: 'power-jumper' },
};

/** One end of a cable: where it is plugged in. */
export interface CableEnd {
  /** As on the screen: 'Port 3B-04', 'A C38 R1', 'Distro 4'. */
  readonly words: string;
  /** The same where there is little room: '3B-04', 'A C38 R1', 'D4'. */
  readonly short: string;
}

/** A cable, or the jumpers of one run or circuit together, with a label at both ends. */
export interface LabelledCable {
  readonly kind: LabelledKind;
  /** Name on both labels: that of its port, breakout or circuit. */
  readonly name: string;
  readonly from: CableEnd;
  readonly to: CableEnd;
  /** Stock length where the plan lets it be worked out (home runs, returns), and the cable of the catalogue that is counted for it. */
  readonly lengthClass: string;
  /** Cables that the label stands for: more than one for jumpers alone. */
  readonly count: number;
  /** What the code on it leads to. */
  readonly item: LinkedItem;
  /** A panel that it is plugged into, by its number through all surfaces; null: into none. */
  readonly panel: number | null;
}
