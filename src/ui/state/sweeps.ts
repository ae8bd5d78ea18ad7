import type { Change } from '../../calc/compare/change';
import { compareRevisions, panelsChangedSince, type RevisionsAsked } from '../../calc/compare/compare-revisions';
import type { Evaluation } from '../../calc/evaluation';
import type { Build, PanelBuilds } from '../../calc/finder/build';
import { findBuilds } from '../../calc/finder/find-builds';
import { type BuildWeighed, weighBuilds } from '../../calc/finder/weigh-builds';
import { findLevers, type LeverProgress } from '../../calc/levers/find-levers';
import type { LeverAnswer, Topic } from '../../calc/levers/lever';
import { type RateCell, rateTable } from '../../calc/rates/rate-table';
import type { NamedFile } from '../../files/files-to-zip';
import { type CrewSetAsked, type CrewSetStep, makeCrewSet } from '../../files/make-crew-set';
import type { OutputsStep } from '../../files/make-outputs';
import { makePlanFile, type PlanFileAsked } from '../../files/make-plan-file';
import { type FileSize, measureFiles } from '../../files/measure-files';
import type { Plan } from '../../plan/plan';

/** The long searches over a plan: what each is asked, what it yields on its way and what it answers. Plain data, for a worker. */
export interface Sweeps {
  readonly builds: { readonly asked: null; readonly item: never; readonly answer: readonly PanelBuilds[] };
  readonly weights: { readonly asked: readonly Build[]; readonly item: BuildWeighed; readonly answer: undefined };
  /** Asked for these surfaces; null: the whole stage. */
  readonly rates: { readonly asked: readonly string[] | null; readonly item: RateCell; readonly answer: undefined };
  readonly levers: { readonly asked: Topic; readonly item: LeverProgress; readonly answer: LeverAnswer };
  /** What is otherwise in one state of the plan than in another one; null where it has no such revision. */
  readonly changes: { readonly asked: RevisionsAsked; readonly item: never; readonly answer: readonly Change[] | null };
  /** Marks of the panels that changed since a revision, by its id. */
  readonly marks: { readonly asked: string; readonly item: never; readonly answer: Uint8Array | null };
  /** Files and pictures of the stage; null where pictures for the screen were asked. */
  readonly outputs: { readonly asked: PlanFileAsked; readonly item: OutputsStep; readonly answer: NamedFile | null };
  /** The crew set as pages for the screen, or as a file; null where pages were asked. */
  readonly crew: { readonly asked: CrewSetAsked; readonly item: CrewSetStep; readonly answer: NamedFile | null };
  readonly sizes: { readonly asked: null; readonly item: FileSize; readonly answer: undefined };
}

export type SweepName = keyof Sweeps;

export type SweepRequest = {
  [Name in SweepName]: { readonly name: Name; readonly asked: Sweeps[Name]['asked'] };
}[SweepName];

// biome-ignore lint/correctness/useYield: the list of builds is found in one go.
function* listBuilds(plan: Plan): Generator<never, readonly PanelBuilds[]> {
  return findBuilds(plan);
}

// biome-ignore lint/correctness/useYield: two states are compared in one go.
function* compareStates(
  plan: Plan,
  asked: RevisionsAsked,
  evaluate: (plan: Plan) => Evaluation,
): Generator<never, readonly Change[] | null> {
  return compareRevisions(plan, asked, evaluate);
}

// biome-ignore lint/correctness/useYield: two states are compared in one go.
function* markChanged(
  plan: Plan,
  from: string,
  evaluate: (plan: Plan) => Evaluation,
): Generator<never, Uint8Array | null> {
  return panelsChangedSince(plan, from, evaluate);
}

/** The steps of one search; between two of them it may be left. */
export function sweepSteps(
  request: SweepRequest,
  plan: Plan,
  evaluate: (plan: Plan) => Evaluation,
): Generator<unknown, unknown> {
  switch (request.name) {
    case 'builds':
      return listBuilds(plan);
    case 'weights':
      return weighBuilds(plan, request.asked, evaluate);
    case 'rates':
      return rateTable(plan, request.asked, evaluate);
    case 'levers':
      return findLevers(plan, request.asked, evaluate);
    case 'changes':
      return compareStates(plan, request.asked, evaluate);
    case 'marks':
      return markChanged(plan, request.asked, evaluate);
    case 'crew':
      return makeCrewSet(request.asked, plan, evaluate(plan));
    case 'sizes':
      return measureFiles(plan, evaluate(plan));
    case 'outputs':
      return makePlanFile(request.asked, plan, evaluate(plan));
  }
}
