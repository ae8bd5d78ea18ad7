import type { ZoneWiring } from './search/zone-wiring';
import { wayKey } from './way-key';
import type { ZoneAnswer } from './zone-solver';

/** Figures looked at, at most, while beginnings are tried one after the other. */
const FIGURES_TRIED = 400_000;

/** Rounds in which every shape may choose anew. */
const ROUNDS = 4;

/** A shape of zone: how many zones have it, and the wirings that it may take. */
interface Shape {
  readonly zones: number;
  readonly peers: readonly Peer[];
}

interface Peer {
  readonly wiring: ZoneWiring;
  /** Its figures of run and its figure of zone, numbered through the surface. */
  readonly figures: readonly number[];
  readonly way: number;
}

/**
 * Chooses the wiring of every zone of one surface, given what was found for each, so that a crew meets the same figure in
 * every block: of the wirings that are as good as the one that each zone would choose alone, those with fewest distinct
 * figures of run in all zones together, then fewest distinct figures of zone (its way of wiring), then even load, then short
 * cable, then fewer ports. Zones with the same answer are wired the same. Begins with every wiring of every shape in turn and
 * lets the others follow, so that it is exact for two shapes and good for more.
 */
export function matchZones(answers: readonly ZoneAnswer[]): ZoneWiring[] {
  const zones = new Map<ZoneAnswer, number>();
  for (const answer of answers) zones.set(answer, (zones.get(answer) ?? 0) + 1);
  if (zones.size < 2) return answers.map(({ chosen }) => chosen);
  const chosen = new Match(shapesOf(zones)).choose();
  const wirings = new Map([...zones.keys()].map((answer, i) => [answer, chosen[i]!]));
  return answers.map((answer) => wirings.get(answer)!);
}

function shapesOf(zones: ReadonlyMap<ZoneAnswer, number>): Shape[] {
  const figures = new Map<number, number>();
  const ways = new Map<string, number>();
  const numberOf = <Key>(numbers: Map<Key, number>, key: Key): number => {
    const number = numbers.get(key) ?? numbers.size;
    numbers.set(key, number);
    return number;
  };
  return [...zones].map(([{ peers }, count], shape) => ({
    zones: count,
    peers: peers.map((wiring) => ({
      wiring,
      figures: wiring.figureCodes.map((code) => numberOf(figures, code)),
      // Free wirings have no figure in common.
      way: numberOf(ways, wiring.way.kind === 'free' ? `free ${shape}` : wayKey(wiring.way)),
    })),
  }));
}

/** What a surface's wirings come to, in the order of weight. */
interface Total {
  readonly peers: readonly Peer[];
  readonly merit: readonly number[];
}

class Match {
  private readonly shapes: readonly Shape[];
  private readonly now: (Peer | null)[];
  /** How many shapes have each figure of run, and each figure of zone, as it stands. */
  private readonly withFigure: number[] = [];
  private readonly withWay: number[] = [];
  /** Figures of run, and figures of zone, that any shape has. */
  private figures = 0;
  private ways = 0;

  constructor(shapes: readonly Shape[]) {
    this.shapes = shapes;
    this.now = shapes.map(() => null);
    for (const { figures, way } of shapes.flatMap(({ peers }) => peers)) {
      for (const figure of figures) this.withFigure[figure] = 0;
      this.withWay[way] = 0;
    }
  }

  choose(): ZoneWiring[] {
    const { shapes } = this;
    shapes.forEach(({ peers }, i) => {
      this.take(i, peers[0]!);
    });
    this.settle();
    let best = this.read();
    const figuresARound = shapes.reduce(
      (sum, { peers }) => sum + peers.reduce((n, { figures }) => n + figures.length, 0),
      0,
    );
    let left = FIGURES_TRIED;
    for (const [lead, { peers }] of shapes.entries()) {
      for (const peer of peers) {
        // One wiring alone with more figures than all zones together now have is no beginning.
        if (left < 0 || peer.figures.length > best.merit[0]!) break;
        const rounds = this.follow(lead, peer);
        left -= rounds * figuresARound;
        const next = this.read();
        if (compare(next.merit, best.merit) < 0) best = next;
      }
    }
    return best.peers.map(({ wiring }) => wiring);
  }

  /** Lets the other shapes take what suits a wiring of one. Gives how many times all have chosen. */
  private follow(lead: number, peer: Peer): number {
    for (let i = 0; i < this.now.length; i++) this.leave(i);
    this.take(lead, peer);
    for (let i = 0; i < this.now.length; i++) if (i !== lead) this.takeBest(i);
    return 1 + this.settle();
  }

  /** Lets every shape choose anew until none does otherwise. */
  private settle(): number {
    for (let round = 1; round <= ROUNDS; round++) {
      const before = [...this.now];
      for (let i = 0; i < this.now.length; i++) this.takeBest(i);
      if (before.every((peer, i) => peer === this.now[i])) return round;
    }
    return ROUNDS;
  }

  /** What adds fewest figures to those of the other shapes; then even load, short cable, fewer ports. */
  private takeBest(i: number): void {
    this.leave(i);
    let best: Peer | null = null;
    let leastAdded = Number.POSITIVE_INFINITY;
    let leastWays = 0;
    for (const peer of this.shapes[i]!.peers) {
      const added = this.addedBy(peer, leastAdded);
      if (added > leastAdded) continue;
      const ways = this.withWay[peer.way] === 0 ? 1 : 0;
      if (best !== null && (added - leastAdded || ways - leastWays || compareOwn(peer.wiring, best.wiring)) >= 0)
        continue;
      best = peer;
      leastAdded = added;
      leastWays = ways;
    }
    this.take(i, best!);
  }

  /** Figures of run that no other shape has; not counted on above `most`. */
  private addedBy({ figures }: Peer, most: number): number {
    let added = 0;
    for (let i = 0; i < figures.length && added <= most; i++) if (this.withFigure[figures[i]!] === 0) added++;
    return added;
  }

  private take(i: number, peer: Peer): void {
    this.now[i] = peer;
    this.count(peer, 1);
  }

  private leave(i: number): void {
    const peer = this.now[i];
    if (peer === null || peer === undefined) return;
    this.now[i] = null;
    this.count(peer, -1);
  }

  private count({ figures, way }: Peer, by: 1 | -1): void {
    for (const figure of figures) {
      const before = this.withFigure[figure]!;
      this.withFigure[figure] = before + by;
      if (before === 0 || before + by === 0) this.figures += by;
    }
    const before = this.withWay[way]!;
    this.withWay[way] = before + by;
    if (before === 0 || before + by === 0) this.ways += by;
  }

  private read(): Total {
    const peers = this.now.map((peer) => peer!);
    const sum = (of: (wiring: ZoneWiring) => number) =>
      peers.reduce((total, { wiring }, i) => total + of(wiring) * this.shapes[i]!.zones, 0);
    return {
      peers,
      merit: [
        this.figures,
        this.ways,
        sum(({ fullestPixels }) => fullestPixels),
        sum(({ cableMm }) => cableMm),
        sum(({ ports }) => ports),
      ],
    };
  }
}

/** Even load, then short cable, then fewer ports. */
function compareOwn(one: ZoneWiring, other: ZoneWiring): number {
  return one.fullestPixels - other.fullestPixels || one.cableMm - other.cableMm || one.ports - other.ports;
}

/** Below 0 where the first is less at the first place where they differ. */
function compare(one: readonly number[], other: readonly number[]): number {
  for (let i = 0; i < one.length; i++) if (one[i] !== other[i]) return one[i]! - other[i]!;
  return 0;
}
