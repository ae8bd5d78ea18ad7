import type { Culprit } from './culprit';
import type { FaultModel } from './fault-model';

/** What a failure does to the wiring, before one asks which panels that darkens. */
interface Damage {
  /** Runs to follow again. */
  readonly runs: Iterable<number>;
  /** Panels without power. */
  readonly unpowered: ArrayLike<number>;
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
  unpowered: [],
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
  const marks = marksOf(model);
  const dark: number[] = [];
  const add = (panel: number) => {
    if (marks.dark[panel] === 1) return;
    marks.dark[panel] = 1;
    dark.push(panel);
  };
  for (let i = 0; i < damage.unpowered.length; i++) {
    marks.unpowered[damage.unpowered[i]!] = 1;
    add(damage.unpowered[i]!);
  }
  if (damage.broken >= 0) add(damage.broken);
  for (const run of damage.runs) addDark(model, damage, run, withReturns, marks, add);
  for (let i = 0; i < damage.unpowered.length; i++) marks.unpowered[damage.unpowered[i]!] = 0;
  for (const panel of dark) marks.dark[panel] = 0;
  return Uint32Array.from(dark).sort();
}

/** Working space of one model: a mark a panel, all 0 between two questions. */
interface Marks {
  readonly unpowered: Uint8Array;
  readonly dark: Uint8Array;
}

const marksOfModels = new WeakMap<FaultModel, Marks>();

function marksOf(model: FaultModel): Marks {
  const known = marksOfModels.get(model);
  if (known !== undefined) return known;
  const { total } = model.surfaces;
  const marks = { unpowered: new Uint8Array(total), dark: new Uint8Array(total) };
  marksOfModels.set(model, marks);
  return marks;
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

function unpowered({ data }: FaultModel, panels: ArrayLike<number>): Damage {
  const runs = new Set<number>();
  let last = -1;
  for (let i = 0; i < panels.length; i++) {
    const run = data.chainOf[panels[i]!]!;
    if (run >= 0 && run !== last) runs.add(run);
    last = run;
  }
  return { ...nothing, unpowered: panels, runs };
}

/** Follows one run from its entry, then from its return, and adds what neither reaches. */
function addDark(
  model: FaultModel,
  damage: Damage,
  run: number,
  withReturns: boolean,
  marks: Marks,
  add: (panel: number) => void,
): void {
  const { data, passes, entryOf, returnOf } = model;
  const { broken, cutBefore, isLost, hasPicture } = damage;
  const first = data.start[run]!;
  const last = first + data.count[run]! - 1;
  const stops = (panel: number) => panel === broken || (marks.unpowered[panel] === 1 && passes[panel] === 0);
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
  for (let place = dry; place <= dryUntil; place++) add(data.order[place]!);
}
