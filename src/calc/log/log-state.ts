import type { BuildLog, BuildStep, Tick, TickedKind } from '../../plan/build-log';
import { compareTicks } from '../../plan/merge-ticks';
import type { SurfaceSet } from '../surfaces/surface-table';
import type { BuiltThing, BuiltThings } from './built-thing';
import { thingNamed } from './thing-named';

/** What the newest tick says of one step of one thing; left out where nobody ever ticked it. */
export type StepsOfThing = Readonly<Partial<Record<BuildStep, Pick<Tick, 'done' | 'who' | 'atMs'>>>>;

export interface ThingState extends BuiltThing {
  readonly steps: StepsOfThing;
}

/** Something that was ticked once and that the plan does not have now; it counts again when it comes back. */
export interface RestingThing {
  readonly of: TickedKind;
  readonly name: string;
  readonly steps: StepsOfThing;
}

export interface LogState extends Readonly<Record<TickedKind, readonly ThingState[]>> {
  /** By kind and name. */
  readonly resting: readonly RestingThing[];
}

/** What the log says of every column, port and circuit of the plan, and of what the plan no longer has. */
export function stateOfLog(surfaces: SurfaceSet, things: BuiltThings, log: BuildLog): LogState {
  const newest = newestTicks(surfaces, log.ticks);
  const known = new Set<string>();
  const stateOf = (thing: BuiltThing): ThingState => {
    const key = keyOf(thing.of, thing.name);
    known.add(key);
    return { ...thing, steps: newest.get(key)?.steps ?? {} };
  };
  const states = {
    column: things.column.map(stateOf),
    port: things.port.map(stateOf),
    circuit: things.circuit.map(stateOf),
  };
  const resting = [...newest].filter(([key]) => !known.has(key)).map(([, thing]) => thing);
  return { ...states, resting: resting.toSorted(byKindAndName) };
}

/** Whether a step of a thing is ticked and was not taken back. */
export function isDone({ steps }: { readonly steps: StepsOfThing }, step: BuildStep): boolean {
  return steps[step]?.done === true;
}

function newestTicks(surfaces: SurfaceSet, ticks: readonly Tick[]): ReadonlyMap<string, RestingThing> {
  const newest = new Map<string, Tick>();
  for (const tick of ticks) {
    const key = `${keyOf(tick.of, thingNamed(surfaces, tick))} ${tick.step}`;
    const before = newest.get(key);
    if (before === undefined || compareTicks(before, tick) < 0) newest.set(key, tick);
  }
  const things = new Map<string, RestingThing>();
  for (const { of, step, done, who, atMs, ...tick } of newest.values()) {
    const name = thingNamed(surfaces, { of, name: tick.name });
    const steps = { ...things.get(keyOf(of, name))?.steps, [step]: { done, who, atMs } };
    things.set(keyOf(of, name), { of, name, steps });
  }
  return things;
}

function keyOf(of: TickedKind, name: string): string {
  return `${of} ${name}`;
}

function byKindAndName(one: RestingThing, other: RestingThing): number {
  const [a, b] = [keyOf(one.of, one.name), keyOf(other.of, other.name)];
  return a < b ? -1 : a > b ? 1 : 0;
}
