import type { StageParts } from './stage-parts';

/** An ordered chain of panels, entry first: a run on its port, or a circuit. */
export interface Chain {
  /** What its home run is tagged with. */
  readonly tag: string;
  readonly shortTag: string;
  readonly surfaceId: string;
  /** Its panels are `order[start .. start + count - 1]`, numbered through all surfaces. */
  readonly start: number;
  readonly count: number;
  /** Tag of the cable that leaves its last panel for a second port; null without one. */
  readonly returnTag: string | null;
  /** Number of the tag within its row of tags, from 0. */
  readonly number: number;
}

export interface Chains {
  readonly kind: 'data' | 'power';
  readonly list: readonly Chain[];
  readonly order: Uint32Array;
  /** Index of the chain of each panel; -1 where it is on none. */
  readonly chainOf: Int32Array;
}

export function dataChains({ runs }: Pick<StageParts, 'runs'>): Chains {
  return {
    kind: 'data',
    order: runs.order,
    chainOf: runs.runOf,
    list: numbered(
      runs.runs,
      (run) => run.port,
      (run) => run.port.replace(/^\d+-?/, ''),
      (run) => run.zone,
      (run) => run.returnPort,
    ),
  };
}

/** Where room is short, circuits are tagged with their name or with their leg alone. */
export function powerChains({ power }: Pick<StageParts, 'power'>, shortTag: 'circuit' | 'leg'): Chains {
  return {
    kind: 'power',
    order: power.order,
    chainOf: power.circuitOf,
    list: numbered(
      power.circuits,
      (circuit) => `${circuit.name} ${circuit.leg}`,
      (circuit) => (shortTag === 'leg' ? circuit.leg : circuit.name),
      (circuit) => circuit.distro,
      () => null,
    ),
  };
}

interface Piece {
  readonly surfaceId: string;
  readonly start: number;
  readonly count: number;
}

/** Numbers the chains of each group (zone, distro) from 0. */
function numbered<P extends Piece>(
  pieces: readonly P[],
  tag: (piece: P) => string,
  shortTag: (piece: P) => string,
  group: (piece: P) => number,
  returnTag: (piece: P) => string | null,
): readonly Chain[] {
  const next = new Map<number, number>();
  return pieces.map((piece) => {
    const number = next.get(group(piece)) ?? 0;
    next.set(group(piece), number + 1);
    return {
      tag: tag(piece),
      shortTag: shortTag(piece),
      surfaceId: piece.surfaceId,
      start: piece.start,
      count: piece.count,
      returnTag: returnTag(piece),
      number,
    };
  });
}
