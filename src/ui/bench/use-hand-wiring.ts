import { entryCommand, type StepCommand, stepCommand } from '../../calc/runs/hand-changes/step-command';
import { wayCommand } from '../../calc/runs/way-command';
import { panelAt } from '../../calc/surfaces/panel-at';
import type { Command } from '../../plan/commands';
import type { WayOfWiring } from '../../plan/hand-change';
import { selectRecomputing } from '../state/selectors';
import { useActions, useBench, useBenchStore } from '../state/use-bench';
import { useEvaluation } from '../state/use-evaluation';
import { useSay } from './notice-context';

/** A panel beside the picked one, and what a step there by hand means. */
export interface Neighbour {
  /** As seen from inside, a ceiling from below. */
  readonly side: 'left' | 'right' | 'below' | 'above';
  readonly index: number;
  readonly name: string;
  readonly means: 'cut' | 'join';
}

const sides = [
  ['left', -1, 0],
  ['right', 1, 0],
  ['below', 0, -1],
  ['above', 0, 1],
] as const;

/** Counts strokes, so that each is an undo step of its own. */
let strokes = 0;

function isCut(command: Command): boolean {
  return command.name === 'put-step' && command.args.change.kind === 'cut';
}

/** Wiring by hand: every step is one change that can be undone, or says why it means nothing. */
export function useHandWiring() {
  const { store } = useBenchStore();
  const { dispatch } = useActions();
  const say = useSay();
  const isLate = useBench(selectRecomputing);
  const surfaces = useEvaluation((evaluation) => evaluation.surfaces);
  const runs = useEvaluation((evaluation) => evaluation.runs.results);

  function take(found: StepCommand, done: string): void {
    const outcome = 'reason' in found ? { refused: found.reason } : dispatch(found.command);
    say('refused' in outcome ? outcome.refused : `${done} Undo takes it back.`);
  }

  return {
    isLate,
    runOf: (panel: number) => runs.runOf[panel] ?? -1,

    neighboursOf(panel: number): readonly Neighbour[] {
      const picked = panelAt(surfaces, panel);
      if (picked === null) return [];
      const { surface, column, row } = picked;
      const offset = surfaces.offsets[surfaces.surfaces.indexOf(surface)]!;
      return sides.flatMap(([side, right, up]) => {
        const [c, r] = [column + right, row + up];
        if (c < 1 || c > surface.columns || r < 1 || r > surface.rows) return [];
        const local = surface.at[(c - 1) * surface.rows + r - 1]!;
        if (local < 0) return [];
        const index = local + offset;
        const [own, other] = [runs.runOf[panel]!, runs.runOf[index]!];
        if (own < 0 || other < 0 || runs.runs[own]!.zone !== runs.runs[other]!.zone) return [];
        if (own === other && Math.abs(runs.placeOf[panel]! - runs.placeOf[index]!) !== 1) return [];
        return [{ side, index, name: panelAt(surfaces, index)!.name, means: own === other ? 'cut' : 'join' }];
      });
    },

    /** Joins or cuts between two neighbours. */
    step(from: number, to: number): void {
      const { plan, evaluation } = store.getState();
      if (evaluation !== null) take(stepCommand(plan, evaluation, from, to), 'Changed by hand.');
    },

    /** A stroke over two panels joins or cuts between them; over more it joins what is not joined yet, as one change. */
    stroke(panels: readonly number[]): void {
      const mergeKey = `stroke ${++strokes}`;
      let changes = 0;
      for (let i = 1; i < panels.length; i++) {
        const { plan, evaluation } = store.getState();
        if (evaluation === null || selectRecomputing(store.getState())) return;
        const found = stepCommand(plan, evaluation, panels[i - 1]!, panels[i]!);
        if (panels.length > 2 && 'command' in found && isCut(found.command)) continue;
        const outcome = 'reason' in found ? { refused: found.reason } : dispatch(found.command, { mergeKey });
        if ('refused' in outcome) {
          say(outcome.refused);
          return;
        }
        changes++;
      }
      say(
        changes > 0
          ? 'Changed by hand. Undo takes it back.'
          : 'These panels follow each other already. Drag over two of them to cut.',
      );
    },

    begin(panel: number): void {
      const { plan, evaluation } = store.getState();
      if (evaluation !== null) take(entryCommand(plan, evaluation, panel), 'The run begins here by hand.');
    },

    wireZone(zone: number, way: WayOfWiring | null): void {
      const { plan, evaluation } = store.getState();
      const command = evaluation && wayCommand(plan, evaluation, { zone }, way);
      if (command)
        take({ command }, `Zone ${zone + 1} is wired ${way === null ? 'as the search chooses' : 'by hand'}.`);
    },
  };
}
