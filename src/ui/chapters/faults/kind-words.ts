import type { CulpritKind } from '../../../calc/faults/culprit';

/** Kinds of part as one chooses among them: from the node to the panel, then the supply from the legs down. */
export const kindWords: readonly { readonly value: CulpritKind; readonly label: string; readonly group: string }[] = [
  { value: 'panel', label: 'panel', group: 'Signal' },
  { value: 'jumper', label: 'data jumper', group: 'Signal' },
  { value: 'home-run', label: 'home run', group: 'Signal' },
  { value: 'port', label: 'port', group: 'Signal' },
  { value: 'breakout', label: 'breakout', group: 'Signal' },
  { value: 'trunk', label: 'trunk', group: 'Signal' },
  { value: 'processor', label: 'processor', group: 'Signal' },
  { value: 'node', label: 'node', group: 'Signal' },
  { value: 'power-jumper', label: 'power jumper', group: 'Supply' },
  { value: 'circuit', label: 'circuit', group: 'Supply' },
  { value: 'distro', label: 'distro', group: 'Supply' },
  { value: 'distro-leg', label: 'leg of one distro', group: 'Supply' },
  { value: 'leg', label: 'leg of the whole stage', group: 'Supply' },
];
