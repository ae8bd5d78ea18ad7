import { countDark } from '../../../calc/faults/count-dark';
import type { Culprit } from '../../../calc/faults/culprit';
import { culpritName } from '../../../calc/faults/culprit-words';
import { darkBy } from '../../../calc/faults/dark-by';
import type { FaultModel } from '../../../calc/faults/fault-model';
import { panelAt } from '../../../calc/surfaces/panel-at';
import { culpritOfSelection } from '../../state/culprit-of-selection';
import { faultModelOf, type Wired } from '../../state/fault-model-of';
import type { Selection } from '../../state/selection';

/** One part near what is picked, and what goes dark when it fails. */
export interface DarkIfRow {
  /** 'jumper A C38 R8 to A C38 R9': finds the part again. */
  readonly name: string;
  readonly panels: number;
  /** Panels of the stage that go dark, by their share of it. */
  readonly share: number;
  /** The lowest and the highest number of them, by name: 'A C38 R9'; null where nothing goes dark. */
  readonly first: string | null;
  readonly last: string | null;
}

/** What goes dark when a cable beside what is picked fails, when it fails itself, or what feeds it. */
export function darkIf(evaluation: Wired, selection: Selection): readonly DarkIfRow[] {
  const model = faultModelOf(evaluation);
  return culpritsBeside(model, evaluation, selection).map((culprit) => {
    const dark = darkBy(model, culprit);
    const { panels, share } = countDark(model.surfaces, dark);
    const named = (panel: number | undefined) =>
      panel === undefined ? null : (panelAt(model.surfaces, panel)?.name ?? null);
    return { name: culpritName(model, culprit), panels, share, first: named(dark[0]), last: named(dark.at(-1)) };
  });
}

function culpritsBeside(model: FaultModel, evaluation: Wired, selection: Selection): readonly Culprit[] {
  if (selection.kind === 'panel') return besidePanel(model, selection.index);
  const itself = culpritOfSelection(evaluation, selection);
  if (itself === null) return [];
  const found: Culprit[] = [itself];
  if (itself.kind === 'port' || itself.kind === 'home-run') {
    const breakout = model.outlets[itself.index]?.breakout ?? -1;
    if (breakout >= 0) found.push({ kind: 'breakout', index: breakout });
  }
  if (itself.kind === 'circuit') found.push({ kind: 'distro', index: model.distroOf[itself.index]! });
  return found;
}

/** The cable to a panel, the panel, the cable from it, its port and its circuit. */
function besidePanel({ data, power, entryOf }: FaultModel, panel: number): readonly Culprit[] {
  const run = data.chainOf[panel] ?? -1;
  const circuit = power.chainOf[panel] ?? -1;
  const itself: Culprit = { kind: 'panel', index: panel };
  const supply: readonly Culprit[] = circuit < 0 ? [] : [{ kind: 'circuit', index: circuit }];
  if (run < 0) return [itself, ...supply];
  const at = data.at[panel]!;
  const outlet = entryOf[run]!;
  const isFirst = at === data.start[run]!;
  const isLast = at === data.start[run]! + data.count[run]! - 1;
  const to: Culprit = isFirst ? { kind: 'home-run', index: outlet } : { kind: 'jumper', index: at };
  const from: readonly Culprit[] = isLast ? [] : [{ kind: 'jumper', index: at + 1 }];
  return [to, itself, ...from, { kind: 'port', index: outlet }, ...supply];
}
