import type { Evaluation } from '../evaluation';
import { pairThings } from './pair-things';
import { panelThings } from './panel-things';

/** What is looked at of a plan, and where the document anchors its panels (see `anchorKeys`). */
export interface ChangedPanelsOf {
  readonly surfaces: Evaluation['surfaces'];
  readonly runs: { readonly results: Pick<Evaluation['runs']['results'], 'runs' | 'order' | 'runOf'> };
  readonly power: { readonly results: Pick<Evaluation['power']['results'], 'circuits' | 'order' | 'circuitOf'> };
  readonly anchors?: readonly (string | null)[];
}

/**
 * By panel number of the new plan, 1 where a crew builds or wires it otherwise than in the old one: it was not there, it is of
 * another type, it hangs on another port or circuit, or another panel comes before it there. A wall that was put elsewhere
 * and columns that are only counted otherwise mark nothing.
 */
export function panelsChanged(before: ChangedPanelsOf, after: ChangedPanelsOf): Uint8Array {
  const old = panelThings(before.surfaces, before.anchors).things;
  const now = panelThings(after.surfaces, after.anchors).things;
  const { oldOf } = pairThings(old, now);
  const plugsThen = plugsOf(before);
  const plugsNow = plugsOf(after);
  return Uint8Array.from(now, ({ detail }, panel) => {
    const was = oldOf[panel]!;
    if (was < 0 || old[was]!.detail !== detail) return 1;
    const isSame = plugsNow.every((plug, kind) => {
      const then = plugsThen[kind]!;
      const isOn = plug.name(panel) === then.name(was) && plug.end(panel) === then.end(was);
      const [source, formerly] = [plug.before[panel]!, then.before[was]!];
      return isOn && (source < 0 ? formerly < 0 : formerly >= 0 && oldOf[source] === formerly);
    });
    return isSame ? 0 : 1;
  });
}

/** How panels hang on chains of one kind. */
interface Plugs {
  /** Port or circuit that a panel is on. */
  readonly name: (panel: number) => string | undefined;
  /** Port that it goes back to, where it is the last of a run with a return. */
  readonly end: (panel: number) => string | null;
  /** By panel, the one before it on its chain; -1: none. */
  readonly before: Int32Array;
}

function plugsOf({
  surfaces,
  runs: { results: signal },
  power: { results: power },
}: ChangedPanelsOf): readonly Plugs[] {
  const endOf = new Map(
    signal.runs.flatMap(({ returnPort, start, count }): [number, string][] =>
      returnPort === null ? [] : [[signal.order[start + count - 1]!, returnPort]],
    ),
  );
  return [
    {
      name: (panel) => signal.runs[signal.runOf[panel]!]?.port,
      end: (panel) => endOf.get(panel) ?? null,
      before: panelsBefore(surfaces.total, signal.runs, signal.order),
    },
    {
      name: (panel) => power.circuits[power.circuitOf[panel]!]?.name,
      end: () => null,
      before: panelsBefore(surfaces.total, power.circuits, power.order),
    },
  ];
}

function panelsBefore(
  panels: number,
  chains: readonly { readonly start: number; readonly count: number }[],
  order: Uint32Array,
): Int32Array {
  const before = new Int32Array(panels).fill(-1);
  for (const { start, count } of chains) {
    for (let place = start + 1; place < start + count; place++) before[order[place]!] = order[place - 1]!;
  }
  return before;
}
