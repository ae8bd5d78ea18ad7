import type { Circuit } from '../power/power-result';
import type { Run } from '../runs/run-result';
import type { SurfaceSet } from '../surfaces/surface-table';
import type { Zone } from '../zones/zone-result';
import type { Culprit, CulpritKind } from './culprit';

/** A run as far as faults go: `returnPort` is the second port, at its last panel; null or left out: none. */
export type FaultRun = Pick<Run, 'port' | 'zone' | 'start' | 'count'> & { readonly returnPort?: string | null };

export interface FaultInputs {
  readonly surfaces: SurfaceSet;
  readonly zones: readonly Pick<Zone, 'processor'>[];
  readonly runs: { readonly runs: readonly FaultRun[]; readonly order: Uint32Array; readonly runOf: Int32Array };
  readonly nodes: { readonly nodes: readonly { readonly name: string }[]; readonly nodeOfZone: readonly number[] };
  readonly power: {
    readonly circuits: readonly Pick<Circuit, 'name' | 'distro' | 'leg' | 'start' | 'count'>[];
    readonly order: Uint32Array;
    readonly circuitOf: Int32Array;
  };
  /** By panel, 1 where it passes data on without power. */
  readonly passes: Uint8Array;
}

/** Chains of panels, entry first: chain c holds `order[start[c] .. start[c] + count[c] - 1]`. */
export interface ChainSet {
  readonly order: Uint32Array;
  readonly start: Uint32Array;
  readonly count: Uint32Array;
  /** By panel, the chain that it is on; -1: none. */
  readonly chainOf: Int32Array;
  /** By panel, where it stands in `order`; meaningless for a panel on no chain. */
  readonly at: Uint32Array;
}

/** A port with a run on it. */
export interface Outlet {
  readonly port: string;
  readonly run: number;
  readonly end: 'entry' | 'return';
  /** Index into the model's breakouts, -1 on a processor with direct ports; into its processors. */
  readonly breakout: number;
  readonly processor: number;
}

/** What hangs on what, for asking what a failure darkens and what darkness comes from. Made once from a plan's results. */
export interface FaultModel extends Pick<FaultInputs, 'surfaces' | 'passes'> {
  readonly data: ChainSet;
  readonly power: ChainSet;
  readonly outlets: readonly Outlet[];
  /** By run: its outlets, by their index; -1: no return. */
  readonly entryOf: Int32Array;
  readonly returnOf: Int32Array;
  /** '3B', and processors by their number. */
  readonly breakouts: readonly string[];
  readonly processors: readonly number[];
  readonly nodes: readonly string[];
  /** By run, the node whose picture it shows; -1: none known. */
  readonly nodeOf: Int32Array;
  readonly circuits: readonly string[];
  /** Numbers of the distros, and by circuit the index into them. */
  readonly distros: readonly number[];
  readonly distroOf: Int32Array;
  /** By circuit, a bit for each leg that it hangs on: L1 is 1, L2 2, L3 4. */
  readonly legsOf: Uint8Array;
}

/** Bits of the legs that a circuit needs: a two-pole circuit both of its two. */
const legBits: Readonly<Record<Circuit['leg'], number>> = { L1: 1, L2: 2, L3: 4, 'L1-L2': 3, 'L2-L3': 6, 'L3-L1': 5 };

export function makeFaultModel({ surfaces, zones, runs, nodes, power, passes }: FaultInputs): FaultModel {
  const breakouts = new Listing<string>();
  const processors = new Listing<number>();
  const outlets: Outlet[] = [];
  const plug = (port: string, run: number, end: Outlet['end']): number => {
    const [, processor = '', letter = ''] = /^(\d+)([A-Z]*)-/.exec(port) ?? [];
    const breakout = letter === '' ? -1 : breakouts.add(`${processor}${letter}`);
    const number = processor === '' ? (zones[runs.runs[run]!.zone]?.processor ?? 0) : Number(processor);
    return outlets.push({ port, run, end, breakout, processor: processors.add(number) }) - 1;
  };
  const entryOf = Int32Array.from(runs.runs, ({ port }, run) => plug(port, run, 'entry'));
  const returnOf = Int32Array.from(runs.runs, ({ returnPort = null }, run) =>
    returnPort === null ? -1 : plug(returnPort, run, 'return'),
  );
  const distros = new Listing<number>();
  const distroOf = Int32Array.from(power.circuits, ({ distro }) => distros.add(distro));
  return {
    surfaces,
    data: chainSet(runs.runs, runs.order, runs.runOf),
    power: chainSet(power.circuits, power.order, power.circuitOf),
    outlets,
    entryOf,
    returnOf,
    breakouts: breakouts.items,
    processors: processors.items,
    nodes: nodes.nodes.map(({ name }) => name),
    nodeOf: Int32Array.from(runs.runs, ({ zone }) => nodes.nodeOfZone[zone] ?? -1),
    circuits: power.circuits.map(({ name }) => name),
    distros: distros.items,
    distroOf,
    legsOf: Uint8Array.from(power.circuits, ({ leg }) => legBits[leg]),
    passes,
  };
}

/** Every part of one kind. */
export function* culpritsOf(model: FaultModel, kind: CulpritKind): Generator<Culprit> {
  if (kind === 'jumper' || kind === 'power-jumper') {
    const { start, count } = kind === 'jumper' ? model.data : model.power;
    for (let chain = 0; chain < start.length; chain++) {
      for (let place = 1; place < count[chain]!; place++) yield { kind, index: start[chain]! + place };
    }
    return;
  }
  const total = countOf(model, kind);
  for (let index = 0; index < total; index++) yield { kind, index };
}

function countOf(model: FaultModel, kind: Exclude<CulpritKind, 'jumper' | 'power-jumper'>): number {
  switch (kind) {
    case 'panel':
      return model.surfaces.total;
    case 'home-run':
    case 'port':
      return model.outlets.length;
    case 'trunk':
    case 'breakout':
      return model.breakouts.length;
    case 'processor':
      return model.processors.length;
    case 'node':
      return model.nodes.length;
    case 'circuit':
      return model.circuits.length;
    case 'distro':
      return model.distros.length;
    case 'distro-leg':
      return model.distros.length * 3;
    case 'leg':
      return model.circuits.length > 0 ? 3 : 0;
  }
}

/** Things in the order in which they first came up, each once. */
class Listing<T> {
  readonly items: T[] = [];
  readonly #indices = new Map<T, number>();

  add(item: T): number {
    const known = this.#indices.get(item);
    if (known !== undefined) return known;
    this.#indices.set(item, this.items.length);
    return this.items.push(item) - 1;
  }
}

function chainSet(
  chains: readonly { readonly start: number; readonly count: number }[],
  order: Uint32Array,
  chainOf: Int32Array,
): ChainSet {
  const at = new Uint32Array(chainOf.length);
  for (const { start, count } of chains) {
    for (let place = start; place < start + count; place++) at[order[place]!] = place;
  }
  return {
    order,
    start: Uint32Array.from(chains, ({ start }) => start),
    count: Uint32Array.from(chains, ({ count }) => count),
    chainOf,
    at,
  };
}
