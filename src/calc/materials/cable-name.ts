import type { Cable, CableKind } from '../../plan/cable';

const nameOf: Readonly<Record<CableKind, string>> = {
  'home-run': 'Home run',
  'data-jumper': 'Data jumper',
  'power-jumper': 'Power jumper',
  circuit: 'Circuit cable',
  trunk: 'Fibre trunk',
  video: 'Video cable',
};

/** The cable of a kind that is counted: the first of the catalogue; undefined where it has none. */
export function cableOfKind(cables: readonly Cable[], kind: CableKind): Cable | undefined {
  return cables.find((item) => item.kind === kind);
}

/** What the cables of a kind are called, on the bill and on labels: as in the catalogue, else by their kind. */
export function cableName(cables: readonly Cable[], kind: CableKind): string {
  return cableOfKind(cables, kind)?.name ?? nameOf[kind];
}
