import type { Command } from '../../../plan/commands';
import { freshId } from '../../../plan/fresh-id';
import type { Plan } from '../../../plan/plan';
import type { Evaluation } from '../../evaluation';
import { anchorAt } from '../locate-anchor';

/** What of an evaluation a change of one run hangs on. */
export type StepGround = Pick<Evaluation, 'surfaces' | 'ceilings' | 'zones' | 'runs'>;

/** A command, or why the change has no meaning here. */
export type StepCommand = { readonly command: Command } | { readonly reason: string };

/**
 * What a step of the hand from one panel to its neighbour means: a cut where the two follow each other on a run, a join where
 * they are on two runs of one zone. Panels are numbered through all surfaces.
 */
export function stepCommand(plan: Plan, ground: StepGround, from: number, to: number): StepCommand {
  const { runs, runOf, placeOf } = ground.runs.results;
  const [one, other] = [runs[runOf[from] ?? -1], runs[runOf[to] ?? -1]];
  if (one === undefined || other === undefined) return { reason: 'One of the two panels is on no run.' };
  if (!areNeighbours(ground, from, to)) return { reason: 'The two panels do not share an edge.' };
  if (one.zone !== other.zone)
    return { reason: 'A run does not leave its zone: the two panels are in different ones.' };
  const follow = Math.abs(placeOf[from]! - placeOf[to]!) === 1;
  if (one === other && !follow) return { reason: 'The two panels are on one run already, further on.' };
  const ends = [anchorOf(plan, ground, from), anchorOf(plan, ground, to)] as const;
  if (ends[0] === null || ends[1] === null) return { reason: 'The panel stands in no segment of the plan.' };
  const kind = one === other ? 'cut' : 'join';
  const id = freshId(plan, kind);
  return { command: { name: 'put-step', args: { change: { kind, id, from: ends[0], to: ends[1] } } } };
}

/** Lets the run that holds a panel begin there. */
export function entryCommand(plan: Plan, ground: StepGround, panel: number): StepCommand {
  const { runOf, placeOf } = ground.runs.results;
  if ((runOf[panel] ?? -1) < 0) return { reason: 'The panel is on no run.' };
  if (placeOf[panel] === 1) return { reason: 'Its run begins here already.' };
  const at = anchorOf(plan, ground, panel);
  if (at === null) return { reason: 'The panel stands in no segment of the plan.' };
  return { command: { name: 'put-step', args: { change: { kind: 'entry', id: freshId(plan, 'entry'), at } } } };
}

function surfaceOf({ surfaces }: StepGround, panel: number): number {
  return surfaces.surfaces.findIndex(
    ({ count }, i) => panel >= surfaces.offsets[i]! && panel < surfaces.offsets[i]! + count,
  );
}

function anchorOf(plan: Plan, ground: StepGround, panel: number) {
  const surface = surfaceOf(ground, panel);
  const { surfaces, ceilings } = ground;
  const local = panel - surfaces.offsets[surface]!;
  return anchorAt({ surfaces, walls: plan.walls, ceilings: ceilings.results }, surface, local);
}

function areNeighbours(ground: StepGround, from: number, to: number): boolean {
  const surface = surfaceOf(ground, from);
  if (surface < 0 || surface !== surfaceOf(ground, to)) return false;
  const { column, row } = ground.surfaces.surfaces[surface]!;
  const offset = ground.surfaces.offsets[surface]!;
  const across = Math.abs(column[from - offset]! - column[to - offset]!);
  return across + Math.abs(row[from - offset]! - row[to - offset]!) === 1;
}
