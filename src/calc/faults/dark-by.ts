import type { Culprit } from './culprit';
import type { FaultModel } from './fault-model';

/** What a failure does to the wiring, before one asks which panels that darkens. */
interface Damage {
  /** Runs to follow again. */
  readonly runs: Iterable<number>;
  /** Panels without power. */
  readonly unpowered: ReadonlySet<number>;
  /** A panel that is broken itself. */
  readonly broken: number;
  /** Place in the order of data of the panel before which the run is cut; -1: nowhere. */
  readonly cutBefore: number;
  readonly isLost: (outlet: number) => boolean;
  /** Where the node is gone a run carries no picture, whichever end it is fed from. */
  readonly hasPicture: boolean;
}

const nothing: Damage = {
  runs: [],
  unpowered: new Set(),
  broken: -1,
  cutBefore: -1,
  isLost: () => false,
  hasPicture: true,
};

/**
 * Numbers of the panels that go dark when one part fails, in rising order. A cut darkens what follows it on its run unless a
 * return feeds it from the other end; a broken panel stays dark and passes no data on, but power; a panel without power
 * passes no data on unless its sheet says so. A panel on no run or on no circuit is taken to work but for its own fault and
 * for the chain that it is on. `withReturns` false: as if no run had one.
 */
export function darkBy(model: FaultModel, culprit: Culprit, withReturns = true): Uint32Array {
  const damage = damageOf(model, culprit);
  const dark = new Set<number>(damage.unpowered);
  if (damage.broken >= 0) dark.add(damage.broken);
  for (const run of damage.runs) addDark(model, damage, run, withReturns, dark);
  return Uint32Array.from(dark).sort();
}

function damageOf(model: FaultModel, { kind, index }: Culprit): Damage {
  const { data, power, outlets, distroOf, legsOf } = model;
  switch (kind) {
    case 'panel':
      return { ...nothing, broken: index, runs: data.chainOf[index]! < 0 ? [] : [data.chainOf[index]!] };
    case 'jumper':
      return { ...nothing, cutBefore: index, runs: [data.chainOf[data.order[index]!]!] };
    case 'home-run':
    case 'port':
      return { ...nothing, isLost: (outlet) => outlet === index, runs: [outlets[index]!.run] };
    case 'trunk':
    case 'breakout':
      return outletsLost(model, (outlet) => outlets[outlet]!.breakout === index);
    case 'processor':
      return outletsLost(model, (outlet) => outlets[outlet]!.processor === index);
    case 'node':
      return { ...nothing, hasPicture: false, runs: indicesWhere(model.nodeOf, (node) => node === index) };
    case 'power-jumper':
      return unpowered(model, partOf(model, power.chainOf[power.order[index]!]!, index));
    case 'circuit':
      return unpowered(model, partOf(model, index, 0));
    case 'distro':
      return circuitsLost(model, (circuit) => distroOf[circuit] === index);
    case 'leg':
      return circuitsLost(model, (circuit) => (legsOf[circuit]! & (1 << index)) !== 0);
    case 'distro-leg':
      return circuitsLost(
        model,
        (circuit) => distroOf[circuit] === Math.floor(index / 3) && (legsOf[circuit]! & (1 << (index % 3))) !== 0,
      );
  }
}

function indicesWhere(values: Int32Array, isWanted: (value: number) => boolean): number[] {
  const found: number[] = [];
  for (let index = 0; index < values.length; index++) if (isWanted(values[index]!)) found.push(index);
  return found;
}

function outletsLost(model: FaultModel, isLost: (outlet: number) => boolean): Damage {
  const runs = new Set<number>();
  model.outlets.forEach(({ run }, outlet) => {
    if (isLost(outlet)) runs.add(run);
  });
  return { ...nothing, isLost, runs };
}

function circuitsLost(model: FaultModel, isLost: (circuit: number) => boolean): Damage {
  const panels: number[] = [];
  for (let circuit = 0; circuit < model.power.start.length; circuit++) {
    if (isLost(circuit)) for (const panel of partOf(model, circuit, 0)) panels.push(panel);
  }
  return unpowered(model, panels);
}

/** Panels of a circuit from a place in the order of power on. */
function partOf({ power }: FaultModel, circuit: number, from: number): Uint32Array {
  const start = power.start[circuit]!;
  return power.order.subarray(Math.max(start, from), start + power.count[circuit]!);
}

function unpowered({ data }: FaultModel, panels: Iterable<number>): Damage {
  const set = new Set(panels);
  const runs = new Set<number>();
  for (const panel of set) if (data.chainOf[panel]! >= 0) runs.add(data.chainOf[panel]!);
  return { ...nothing, unpowered: set, runs };
}

/** Follows one run from its entry, then from its return, and adds what neither reaches. */
function addDark(model: FaultModel, damage: Damage, run: number, withReturns: boolean, dark: Set<number>): void {
  const { data, passes, entryOf, returnOf } = model;
  const { unpowered, broken, cutBefore, isLost, hasPicture } = damage;
  const first = data.start[run]!;
  const last = first + data.count[run]! - 1;
  const stops = (panel: number) => panel === broken || (unpowered.has(panel) && passes[panel] === 0);
  const isFed = (outlet: number) => hasPicture && outlet >= 0 && !isLost(outlet);

  /** The first place that data from the entry does not come to, and the last that data from the return does not come to. */
  let dry = first;
  if (isFed(entryOf[run]!)) {
    while (dry <= last && dry !== cutBefore) if (stops(data.order[dry++]!)) break;
  }
  let dryUntil = last;
  if (withReturns && isFed(returnOf[run]!)) {
    // A cut needs no look from here: what stands before it is fed from the entry.
    while (dryUntil >= first) if (stops(data.order[dryUntil--]!)) break;
  }
  for (let place = dry; place <= dryUntil; place++) dark.add(data.order[place]!);
}
