import type { Evaluation } from '../evaluation';
import { circuitThings, runThings } from './chain-things';
import type { Change, Changed } from './change';
import { compareChecks } from './compare-checks';
import { compareFigures } from './compare-figures';
import { compareMaterials } from './compare-materials';
import { listChanges } from './list-changes';
import { markPartners, type PartnerMarks } from './mark-partners';
import { nodeThings } from './node-things';
import { pairThings } from './pair-things';
import { panelThings } from './panel-things';
import { processorThings } from './processor-things';
import type { ThingList } from './thing';
import { trunkThings } from './trunk-things';

/** What is compared of a plan: what follows from it. */
export type ComparedPlan = Pick<
  Evaluation,
  'headline' | 'checks' | 'surfaces' | 'zones' | 'runs' | 'nodes' | 'power' | 'materials'
> & {
  /** Where the document holds each panel (see `anchorKeys`): two states of one plan follow a panel by it to another name. */
  readonly anchors?: readonly (string | null)[];
};

/**
 * What the crew reads otherwise in the new plan than in the old one: head figures, checks, and by their names panels, ports,
 * trunks, processors, nodes, circuits and lines of the bill. Empty where nothing of it changed; ids count for nothing but where
 * `anchors` are given.
 */
export function comparePlans(before: ComparedPlan, after: ComparedPlan): Change[] {
  const changes: Change[] = [];
  const compare = (what: Changed, old: ThingList, now: ThingList): PartnerMarks => {
    const pairing = pairThings(old.things, now.things);
    for (const change of listChanges(what, old, now, pairing)) changes.push(change);
    return markPartners(pairing);
  };
  const lists = (make: (plan: ComparedPlan, side: keyof PartnerMarks) => ThingList): [ThingList, ThingList] => [
    make(before, 'before'),
    make(after, 'after'),
  ];
  const panels = compare('panel', ...lists(({ surfaces, anchors }) => panelThings(surfaces, anchors)));
  const runs = compare('port', ...lists((plan, side) => runThings(plan.runs.results, plan.surfaces, panels[side])));
  compare('trunk', ...lists((plan, side) => trunkThings(plan.runs.results.runs, runs[side])));
  const processors = compare(
    'processor',
    ...lists((plan, side) => processorThings(plan.zones.results.zones, plan.surfaces, panels[side])),
  );
  compare('node', ...lists((plan, side) => nodeThings(plan.nodes.results.nodes, processors[side])));
  compare('circuit', ...lists((plan, side) => circuitThings(plan.power.results, plan.surfaces, panels[side])));
  return [
    ...compareFigures(before.headline, after.headline),
    ...compareChecks(before.checks, after.checks),
    ...changes,
    ...compareMaterials(before.materials.results.lines, after.materials.results.lines),
  ];
}
