import type { PortOutlets } from '../ports/outlets';
import { placeReturns, type RunSlots } from '../runs/place-returns';
import type { WiredZone } from '../runs/wire-zones';
import type { SurfaceSet } from '../surfaces/surface-table';
import { FreePorts } from './free-ports';
import { type ChainPlaces, grantChains } from './grant-chains';
import type { LocatedChain } from './locate-names';
import { readPortName, slotOfPort } from './read-port-name';

/** Returning to where a run comes from, though it should go elsewhere, is worse than anything else. */
const togetherCost = 10;

/** A run and what is known of its ports yet; -1: nothing. */
interface RunPorts {
  readonly zone: number;
  /** Where it would return to if no name was held: that zone. null without a return. */
  readonly returnZone: number | null;
  held: LocatedChain | null;
  out: number;
  back: { readonly zone: number; readonly slot: number } | null;
}

/**
 * Slots of every run where names are held: a run keeps the port of the held chain that it goes on from, with the port that it
 * returns to, as long as its zone's processor has that port. Other runs take ports that were never held, on breakouts in use
 * before others, and held ones only where there are no more. `natural` are the slots that the runs take without held names.
 */
export function holdPorts(
  zones: readonly WiredZone[],
  natural: readonly (readonly RunSlots[])[],
  held: readonly LocatedChain[],
  surfaces: SurfaceSet,
): RunSlots[][] {
  const runs: RunPorts[] = natural.flatMap((slots, zone) =>
    slots.map(({ back }) => ({ zone, returnZone: back === null ? null : back.zone, held: null, out: -1, back: null })),
  );
  const stage = new Stage(zones, held);
  const heldOf = grantChains(placesOf(zones, surfaces), held, (run, index) => {
    return stage.slotOn(runs[run]!.zone, held[index]!.name) !== null;
  });
  runs.forEach((run, index) => {
    const granted = held[heldOf[index]!];
    if (granted === undefined) return;
    run.held = granted;
    run.out = stage.ports[run.zone]!.take(stage.slotOn(run.zone, granted.name)!);
  });
  stage.keepReturns(runs);
  stage.giveOut(runs);
  const byZone: RunSlots[][] = zones.map(() => []);
  for (const { zone, out, back } of runs) byZone[zone]!.push({ out, back });
  return byZone;
}

function placesOf(zones: readonly WiredZone[], { offsets, total }: SurfaceSet): ChainPlaces {
  const chainOf = new Int32Array(total).fill(-1);
  const placeOf = new Uint32Array(total);
  let chains = 0;
  for (const { surface, panels, wiring } of zones) {
    for (let run = 0; run < wiring.ports; run++, chains++) {
      for (let at = wiring.start[run]!; at < wiring.start[run + 1]!; at++) {
        const panel = offsets[surface]! + panels[wiring.order[at]!]!;
        chainOf[panel] = chains;
        placeOf[panel] = at - wiring.start[run]!;
      }
    }
  }
  return { chainOf, placeOf, chains };
}

/** Processors of the stage while their ports are given away. */
class Stage {
  readonly ports: readonly FreePorts[];
  readonly #zones: readonly WiredZone[];
  readonly #zoneOf: ReadonlyMap<number, number>;

  constructor(zones: readonly WiredZone[], held: readonly LocatedChain[]) {
    this.#zones = zones;
    this.#zoneOf = new Map(zones.map(({ zone }, index) => [zone.processor, index]));
    const slots = zones.map(() => new Set<number>());
    for (const name of held.flatMap(({ name, returnName }) => (returnName === null ? [name] : [name, returnName]))) {
      const at = this.#placeOf(name);
      if (at !== null) slots[at.zone]!.add(at.slot);
    }
    this.ports = zones.map(({ ports }, index) => new FreePorts(ports, slots[index]!));
  }

  /** The slot that a name stands for on the processor of a zone; null where it is not one of its ports. */
  slotOn(zone: number, name: string): number | null {
    const at = this.#placeOf(name);
    return at?.zone === zone ? at.slot : null;
  }

  /** Returns stay on their held port where it still is apart from the run's own, and runs to come have room all the same. */
  keepReturns(runs: readonly RunPorts[]): void {
    const toCome = this.#zones.map(() => 0);
    for (const { zone, out } of runs) if (out < 0) toCome[zone]! += 1;
    for (const run of runs) {
      if (run.returnZone === null || run.held?.returnName == null) continue;
      const at = this.#placeOf(run.held.returnName);
      if (at === null || this.#zones[at.zone]!.surface !== this.#zones[run.zone]!.surface) continue;
      const ports = this.ports[at.zone]!;
      if (!ports.isFree(at.slot) || ports.left <= toCome[at.zone]! || !this.#isApart(run, at)) continue;
      run.back = { zone: at.zone, slot: ports.take(at.slot) };
    }
  }

  /** Ports for all that have none yet: pairs as they are without held names, then runs, then returns. */
  giveOut(runs: readonly RunPorts[]): void {
    for (const run of runs) if (run.out < 0 && run.returnZone === run.zone) this.#takePair(run);
    for (const run of runs) {
      const ports = this.ports[run.zone]!;
      if (run.out < 0) run.out = ports.take(ports.best());
    }
    for (const run of runs) if (run.returnZone !== null && run.back === null) run.back = this.#takeReturn(run);
  }

  #placeOf(name: string): { readonly zone: number; readonly slot: number } | null {
    const named = readPortName(name);
    const zone = named === null ? undefined : this.#zoneOf.get(named.processor);
    const slot = zone === undefined ? null : slotOfPort(named!, this.#zones[zone]!.ports);
    return slot === null ? null : { zone: zone!, slot };
  }

  /** Whether a return comes in where it is asked to: on another processor, on another breakout, or anywhere on the same processor. */
  #isApart(run: RunPorts, back: { readonly zone: number; readonly slot: number }): boolean {
    if (run.returnZone !== run.zone) return back.zone !== run.zone;
    if (back.zone !== run.zone) return false;
    const ports = this.ports[run.zone]!;
    return !returnsToAnotherBox(this.#zones[run.zone]!.ports) || ports.boxOf(run.out) !== ports.boxOf(back.slot);
  }

  #takePair(run: RunPorts): void {
    const ports = this.ports[run.zone]!;
    const { ports: outlets } = this.#zones[run.zone]!;
    let best: RunSlots | null = null;
    let least = Number.POSITIVE_INFINITY;
    for (const pair of placeReturns([outlets.runsAProcessor], outlets)[0]!) {
      if (!ports.isFree(pair.out) || !ports.isFree(pair.back!.slot)) continue;
      const cost = ports.cost(pair.out) + ports.cost(pair.back!.slot);
      if (cost < least) [best, least] = [pair, cost];
    }
    if (best === null) return;
    run.out = ports.take(best.out);
    run.back = { zone: run.zone, slot: ports.take(best.back!.slot) };
  }

  #takeReturn(run: RunPorts): { readonly zone: number; readonly slot: number } {
    const apart = [...this.ports.keys()].filter(
      (zone) => zone !== run.zone && this.#zones[zone]!.surface === this.#zones[run.zone]!.surface,
    );
    const wanted = run.returnZone === run.zone ? [run.zone] : [run.returnZone!, ...apart, run.zone];
    const zone = wanted.find((other) => this.ports[other]!.left > 0) ?? run.returnZone!;
    const ports = this.ports[zone]!;
    const slot = ports.best((other) => (this.#isApart(run, { zone, slot: other }) ? 0 : togetherCost));
    return { zone, slot: ports.take(slot) };
  }
}

function returnsToAnotherBox({ returns, breakoutsAProcessor }: PortOutlets): boolean {
  return returns !== 'port' && breakoutsAProcessor >= 2;
}
