import type { Priority } from '../../../plan/signal';
import { wayKey } from '../way-key';
import type { RunLimits, WiringGrid } from '../wiring-grid';
import { mostOnARun } from './bounds/least-chains';
import { leastHigh } from './bounds/least-high';
import { searchFewestPorts } from './fewest-ports';
import { leastOfZone } from './least-ports';
import { compareWithMirror, mirrorGrid } from './mirror-grid';
import { mirrorWiring } from './mirror-wiring';
import { searchMostFree } from './most-free';
import { breakoutsOf, compareMerit, compareRank, type PortsThere, portsTooMany } from './order-of-merit';
import { wireRegularly } from './regular-wirings';
import { repairReach } from './repair-reach';
import { shortenCable } from './shorten-cable';
import { stackBands } from './stack-bands';
import { stairBesideHoles } from './stair-beside-holes';
import { makeReady, type ZoneToWire } from './zone-to-wire';
import type { ZoneWiring } from './zone-wiring';

export interface WiringTerms extends PortsThere {
  readonly priority: Priority;
  /** Moves that the free search may try; left out: enough for a zone of some hundred panels. */
  readonly steps?: number;
}

export interface WiringChoice {
  readonly chosen: ZoneWiring;
  /** The best wiring of every way, best first by the order of merit; the chosen one stands first. */
  readonly ways: readonly ZoneWiring[];
  /** Wirings that are as good as the chosen one as far as hardware, which stands first; those of them that differ in way or figures. */
  readonly peers: readonly ZoneWiring[];
  /** No wiring that leaves as few entries above reach has fewer ports: a proved bound. */
  readonly least: number;
}

/** Moves tried where the user asks for what only a search can give, and where a search merely has to make ends meet. */
const STEPS_ASKED = 6_000_000;
const STEPS_NEEDED = 1_500_000;

/** Wirings among which a surface chooses for regularity, at most: those of most merit. */
const PEERS = 160;

/** Regular ways that are repaired where entries stand above reach, and the share of the moves that these repairs may use. */
const REPAIRED = 4;
const REPAIR_SHARE = 0.5;

/**
 * Chooses the wiring of a zone by the order of merit, from the regular ways and, where these fall short of what is asked
 * for, from a search. Where no wiring keeps every limit it is the one that breaks least; its figures say so. The same
 * arguments give the same answer, a mirrored zone the mirrored one.
 */
export function chooseWiring(grid: WiringGrid, limits: RunLimits, terms: WiringTerms): WiringChoice {
  if (compareWithMirror(grid, limits.counting) > 0) {
    const { chosen, ways, peers, least } = chooseWiring(mirrorGrid(grid), limits, terms);
    const turned = new Map([...ways, ...peers].map((wiring) => [wiring, mirrorWiring(grid, wiring)]));
    const turn = (wirings: readonly ZoneWiring[]) => wirings.map((wiring) => turned.get(wiring)!);
    return { chosen: turned.get(chosen)!, ways: turn(ways), peers: turn(peers), least };
  }
  return new Chooser(makeReady(grid, limits), terms).choose();
}

class Chooser {
  private readonly zone: ZoneToWire;
  private readonly terms: WiringTerms;
  private readonly known: ZoneWiring[];
  private best: ZoneWiring;
  private searchedLeast = 0;
  private searchedHigh = -1;
  private knownHighLeast: number | null = null;
  private readonly knownLeast = new Map<number, number>();

  constructor(zone: ZoneToWire, terms: WiringTerms) {
    this.zone = zone;
    this.terms = terms;
    this.known = wireRegularly(zone, terms.portsThere);
    this.best = this.bestOf(this.known);
  }

  choose(): WiringChoice {
    if (this.isHigh()) this.repair();
    const stair = this.isHigh() ? stairBesideHoles(this.zone, this.knownHighLeast ?? 0) : null;
    if (stair !== null) this.add(stair);
    const { priority } = this.terms;
    const steps = this.terms.steps ?? (priority === 'repeats' ? STEPS_NEEDED : STEPS_ASKED);
    const enough = this.portsEnough();
    if (enough !== null) this.search(steps, enough);
    if (priority === 'most-free') {
      for (const wiring of searchMostFree(this.zone, this.best, this.terms.portsThere, steps)) this.add(wiring);
    }
    if (priority === 'shortest-cable') this.add(shortenCable(this.zone, this.best, Math.floor(steps / 4)));
    const chosen = this.best;
    let least = this.leastWith(chosen.entriesOutOfReach);
    if (chosen.entriesOutOfReach <= this.searchedHigh) least = Math.max(least, this.searchedLeast);
    return { chosen, ways: this.waysWith(chosen), peers: this.peersOf(chosen), least };
  }

  private compare(a: ZoneWiring, b: ZoneWiring): number {
    return compareMerit(a, b, this.terms.priority, this.terms);
  }

  private bestOf(wirings: readonly ZoneWiring[]): ZoneWiring {
    return wirings.reduce((best, next) => (this.compare(next, best) < 0 ? next : best));
  }

  private add(wiring: ZoneWiring): void {
    this.known.push(wiring);
    if (this.compare(wiring, this.best) < 0) this.best = wiring;
  }

  /** Whether the best so far leaves entries above reach that may not be needed. */
  private isHigh(): boolean {
    const { entriesOutOfReach } = this.best;
    if (entriesOutOfReach === 0) return false;
    this.knownHighLeast ??= this.highLeast();
    return entriesOutOfReach > this.knownHighLeast;
  }

  /** Ports at the least with so many entries above reach. */
  private leastWith(entriesOutOfReach: number): number {
    const least = this.knownLeast.get(entriesOutOfReach) ?? leastOfZone(this.zone, entriesOutOfReach);
    this.knownLeast.set(entriesOutOfReach, least);
    return least;
  }

  /** Entries above reach that no wiring can do without; those of panels too large for a port among them. */
  private highLeast(): number {
    const { region, tooLarge, grid, limits } = this.zone;
    const alone = tooLarge.filter((place) => grid.entryHeightMm[place]! > limits.reachMm).length;
    return alone + (region.size === 0 ? 0 : leastHigh(region, mostOnARun(region)));
  }

  private repair(): void {
    const steps = ((this.terms.steps ?? STEPS_NEEDED) * REPAIR_SHARE) / REPAIRED;
    const ways = this.waysWith(this.best);
    // Those that break least, and those that would be best if reach did not count.
    const unbound = [...ways].sort(
      (a, b) => portsTooMany(a, this.terms) - portsTooMany(b, this.terms) || a.figures - b.figures || a.ports - b.ports,
    );
    const chosen = new Set([...ways.slice(0, REPAIRED / 2), ...unbound.slice(0, REPAIRED / 2)]);
    const inVain = new Set<string>();
    for (const way of chosen) {
      const { wiring } = repairReach(this.zone, way, steps, inVain);
      if (wiring !== way) this.add(wiring);
    }
  }

  /** Ports at which a free search may stop, 0 for the least possible; null where it is not called for. */
  private portsEnough(): number | null {
    const { best, terms } = this;
    const least = this.leastWith(best.entriesOutOfReach);
    const isHigh = this.isHigh();
    if (terms.priority === 'fewest-ports' || terms.priority === 'shortest-cable') {
      return isHigh || best.ports > least ? 0 : null;
    }
    const breakouts = breakoutsOf({ ports: least }, terms);
    const savesBreakout = terms.priority === 'repeats' && breakouts < breakoutsOf(best, terms);
    if (!isHigh && !savesBreakout && (best.ports <= terms.portsThere || best.ports <= least)) return null;
    const { portsABreakout = terms.portsThere } = terms;
    return savesBreakout ? Math.max(least, Math.floor(breakouts * portsABreakout)) : Math.max(least, terms.portsThere);
  }

  private search(steps: number, enough: number): void {
    const bands = stackBands(this.zone);
    if (bands !== null) this.add(bands);
    const { wiring, least } = searchFewestPorts(this.zone, this.known, { steps, enough });
    this.searchedLeast = least;
    this.searchedHigh = wiring.entriesOutOfReach;
    this.add(wiring);
  }

  /** The best of every way with every set of figures, best first, and of a zone that is its own mirror image the mirrored ones. */
  private peersOf(chosen: ZoneWiring): ZoneWiring[] {
    const { grid, symmetric } = this.zone;
    const { priority } = this.terms;
    const peers = this.known
      .filter((wiring) => compareRank(wiring, chosen, priority, this.terms) === 0)
      .sort((a, b) => this.compare(a, b))
      .slice(0, PEERS);
    const distinct = new Map([[peerKey(chosen), chosen]]);
    const keep = (wiring: ZoneWiring) => {
      const key = peerKey(wiring);
      if (!distinct.has(key)) distinct.set(key, wiring);
    };
    peers.forEach(keep);
    if (symmetric) for (const wiring of peers) keep(mirrorWiring(grid, wiring));
    return [...distinct.values()];
  }

  /** The best of every way, best first. */
  private waysWith(chosen: ZoneWiring): ZoneWiring[] {
    const byWay = new Map<string, ZoneWiring>();
    for (const wiring of this.known) {
      const key = wayKey(wiring.way);
      const before = byWay.get(key);
      if (before === undefined || this.compare(wiring, before) < 0) byWay.set(key, wiring);
    }
    byWay.set(wayKey(chosen.way), chosen);
    return [...byWay.values()].sort((a, b) => this.compare(a, b));
  }
}

function peerKey({ way, figureCodes }: ZoneWiring): string {
  return `${wayKey(way)} ${figureCodes.join(' ')}`;
}
