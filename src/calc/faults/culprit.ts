/**
 * Kinds of part that can fail alone, in the order in which one looks for it: cables before boxes, small before large
 * (common practice, no source). A jumper is the cable between two panels of a run, a home run the one between a port and
 * the panel at that end; a power jumper and a circuit are the same of the supply. `distro-leg` is one leg behind one distro.
 */
export const culpritKinds = [
  'jumper',
  'home-run',
  'power-jumper',
  'panel',
  'port',
  'circuit',
  'trunk',
  'breakout',
  'processor',
  'node',
  'distro-leg',
  'distro',
  'leg',
] as const;
export type CulpritKind = (typeof culpritKinds)[number];

/**
 * One part that fails. `index` counts in the model's list of its kind: panels by their number through all surfaces; jumpers by
 * the place, in the model's order of data or of power, of the panel that they lead to; home runs and ports by outlet; trunks
 * by breakout; legs of distros by 3 x distro + leg.
 */
export interface Culprit {
  readonly kind: CulpritKind;
  readonly index: number;
}
