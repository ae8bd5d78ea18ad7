import { cableName } from '../../calc/materials/cable-name';
import type { Circuit, PowerResults } from '../../calc/power/power-result';
import type { CableLength, HomeRunLengths } from '../../calc/runs/home-run-lengths';
import type { Run, RunsResults } from '../../calc/runs/run-result';
import { panelAt } from '../../calc/surfaces/panel-at';
import type { SurfaceSet } from '../../calc/surfaces/surface-table';
import type { Cable } from '../../plan/cable';
import type { Plan } from '../../plan/plan';
import { type CableEnd, kindWords, type LabelledCable, type LabelledKind, labelledKinds } from './labelled-cable';
import { stockLengthText } from './stock-length-text';

export interface LabelInputs {
  readonly surfaces: SurfaceSet;
  readonly runs: Pick<RunsResults, 'runs' | 'order'>;
  readonly power: Pick<PowerResults, 'circuits' | 'order'>;
  readonly cables: readonly Cable[];
  /** In the order of runs. */
  readonly homeRuns: readonly HomeRunLengths[];
  readonly lengths: Plan['lengths'];
}

/**
 * Every cable that carries labels, kind by kind, each kind in the order of its schedule. Counted by kind they are the bill's;
 * jumpers of one run or one circuit stand together, since they lie in one bag and carry one name.
 */
export function listLabelledCables(inputs: LabelInputs, kinds: ReadonlySet<LabelledKind>): readonly LabelledCable[] {
  return labelledKinds.filter((kind) => kinds.has(kind)).flatMap((kind) => listers[kind](inputs, kind));
}

type Lister = (inputs: LabelInputs, kind: LabelledKind) => readonly LabelledCable[];

const listers: Readonly<Record<LabelledKind, Lister>> = {
  trunk: (inputs, kind) =>
    breakoutsOf(inputs.runs.runs).map((name) => {
      const processor = Number.parseInt(name, 10);
      const from = { words: `Processor ${processor}`, short: `P${processor}` };
      const to = { words: `Breakout ${name}`, short: name };
      return cable(inputs, { kind, name, from, to, count: 1, item: { kind: 'breakout', name }, panel: null });
    }),
  'home-run': (inputs, kind) =>
    inputs.runs.runs.map(({ port: name, start }, i) => {
      const panel = inputs.runs.order[start]!;
      const to = panelEnd(inputs, panel);
      const rest = { kind, name, from: portEnd(name), to, count: 1, item: { kind: 'port', name }, panel } as const;
      return cable(inputs, rest, inputs.homeRuns[i]!.home);
    }),
  return: (inputs, kind) =>
    inputs.runs.runs.flatMap(({ returnPort: name, start, count }, i) => {
      if (name === null) return [];
      const panel = inputs.runs.order[start + count - 1]!;
      const from = panelEnd(inputs, panel);
      const rest = { kind, name, from, to: portEnd(name), count: 1, item: { kind: 'port', name }, panel } as const;
      return cable(inputs, rest, inputs.homeRuns[i]!.back);
    }),
  'data-jumper': (inputs, kind) =>
    inputs.runs.runs.flatMap((run) => jumpers(inputs, kind, inputs.runs.order, run, { kind: 'port', name: run.port })),
  circuit: (inputs, kind) =>
    inputs.power.circuits.map(({ name, distro, start }) => {
      const panel = inputs.power.order[start]!;
      const from = { words: `Distro ${distro}`, short: `D${distro}` };
      const to = panelEnd(inputs, panel);
      return cable(inputs, { kind, name, from, to, count: 1, item: { kind: 'circuit', name }, panel });
    }),
  'power-jumper': (inputs, kind) =>
    inputs.power.circuits.flatMap((circuit) =>
      jumpers(inputs, kind, inputs.power.order, circuit, { kind: 'circuit', name: circuit.name }),
    ),
};

/** `length`: where one can be said from what the plan states. */
function cable(
  { cables, lengths }: LabelInputs,
  rest: Omit<LabelledCable, 'lengthClass'>,
  length: CableLength | null = null,
): LabelledCable {
  const name = cableName(cables, kindWords[rest.kind].cable);
  return { ...rest, lengthClass: length === null ? name : `${stockLengthText(length, lengths)}, ${name}` };
}

/** The jumpers of a chain, from its first panel to its last; none where it has one panel. */
function jumpers(
  inputs: LabelInputs,
  kind: LabelledKind,
  order: Uint32Array,
  { start, count }: Pick<Run | Circuit, 'start' | 'count'>,
  item: LabelledCable['item'],
): readonly LabelledCable[] {
  if (count < 2) return [];
  const panel = order[start]!;
  const [from, to] = [panelEnd(inputs, panel), panelEnd(inputs, order[start + count - 1]!)];
  return [cable(inputs, { kind, name: item.name, from, to, count: count - 1, item, panel })];
}

/** Tags of the breakouts that have a run or a return on them, by processor and letter. */
function breakoutsOf(runs: readonly Run[]): readonly string[] {
  const ports = runs.flatMap(({ port, returnPort }) => (returnPort === null ? [port] : [port, returnPort]));
  const tags = new Set(ports.flatMap((port) => /^\d+[A-Z]+(?=-)/.exec(port)?.[0] ?? []));
  const rank = (tag: string) => [Number.parseInt(tag, 10), tag.length] as const;
  return [...tags].sort((one, other) => {
    const [a, b] = [rank(one), rank(other)];
    return a[0] - b[0] || a[1] - b[1] || (one < other ? -1 : 1);
  });
}

function portEnd(name: string): CableEnd {
  return { words: `Port ${name}`, short: name };
}

function panelEnd({ surfaces }: LabelInputs, panel: number): CableEnd {
  const name = panelAt(surfaces, panel)?.name ?? 'no panel';
  return { words: name, short: name };
}
