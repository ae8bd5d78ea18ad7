import { type Culprit, type CulpritKind, culpritKinds } from './culprit';
import type { FaultModel } from './fault-model';

/** Every part of the model that can darken one of these panels, by kind: those on whose runs or circuits they hang, and what feeds these. */
export function culpritsTouching(
  model: FaultModel,
  dark: Iterable<number>,
): ReadonlyMap<CulpritKind, readonly Culprit[]> {
  const touched = new Map(culpritKinds.map((kind) => [kind, new Set<number>()]));
  const add = (kind: CulpritKind, index: number) => touched.get(kind)!.add(index);
  const runs = new Set<number>();
  const circuits = new Set<number>();
  for (const panel of dark) {
    add('panel', panel);
    addChain(runs, model.data.chainOf[panel]!);
    addChain(circuits, model.power.chainOf[panel]!);
  }
  for (const run of runs) {
    addSignal(model, run, add);
    // A panel without power darkens what stands behind it, so that every circuit of the run counts.
    const start = model.data.start[run]!;
    for (let place = start; place < start + model.data.count[run]!; place++) {
      addChain(circuits, model.power.chainOf[model.data.order[place]!]!);
    }
  }
  for (const circuit of circuits) addSupply(model, circuit, add);
  return new Map(
    culpritKinds.map((kind) => [kind, Array.from(touched.get(kind)!).map((index): Culprit => ({ kind, index }))]),
  );
}

type Add = (kind: CulpritKind, index: number) => void;

function addChain(chains: Set<number>, chain: number): void {
  if (chain >= 0) chains.add(chain);
}

function addSignal({ data, outlets, entryOf, returnOf, nodeOf }: FaultModel, run: number, add: Add): void {
  const start = data.start[run]!;
  for (let place = start; place < start + data.count[run]!; place++) {
    add('panel', data.order[place]!);
    if (place > start) add('jumper', place);
  }
  for (const index of [entryOf[run]!, returnOf[run]!]) {
    const outlet = outlets[index];
    if (outlet === undefined) continue;
    add('home-run', index);
    add('port', index);
    add('processor', outlet.processor);
    if (outlet.breakout < 0) continue;
    add('trunk', outlet.breakout);
    add('breakout', outlet.breakout);
  }
  if (nodeOf[run]! >= 0) add('node', nodeOf[run]!);
}

function addSupply({ power, distroOf, legsOf }: FaultModel, circuit: number, add: Add): void {
  const start = power.start[circuit]!;
  for (let place = start + 1; place < start + power.count[circuit]!; place++) add('power-jumper', place);
  add('circuit', circuit);
  add('distro', distroOf[circuit]!);
  for (let leg = 0; leg < 3; leg++) {
    if ((legsOf[circuit]! & (1 << leg)) === 0) continue;
    add('leg', leg);
    add('distro-leg', 3 * distroOf[circuit]! + leg);
  }
}
