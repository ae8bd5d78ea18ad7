import { comparePlans } from '../calc/compare/compare-plans';
import { followedPlan } from '../calc/compare/followed-plan';
import { createEvaluator } from '../calc/evaluate';
import type { Plan } from '../plan/plan';
import { planOfContent } from '../plan/plan-of-content';
import { type Command, exitCodes } from './command';
import { compareReport } from './compare-report';
import { readPlan } from './read-plan';
import type { Terminal } from './terminal';

export const compare: Command = {
  name: 'compare',
  usage: 'compare OLD.json [NEW.json] [--from A] [--to B] [--json]',
  files: 2,
  filesLeast: 1,
  options: {
    '[--from NAME]': 'the old plan as it was issued in the revision of this name',
    '[--to NAME]':
      'the new plan as it was issued in the revision of this name; without a second file, of the same plan',
    '--json':
      'one object: changes, each with kind, what, name, before and after; these are lists of words and of figures with their unit, lengths in mm, or null',
  },
  summary:
    'What the crew reads otherwise in the new plan than in the old one: head figures, checks, and by their names panels, ports, trunks, processors, nodes, circuits and the bill. Ends with 1 where something changed.',
  run({ file, secondFile, options, from, to }, terminal) {
    if (secondFile === undefined && from === undefined && to === undefined) {
      terminal.complain('compare wants a second file, or a revision after --from or --to\n');
      return exitCodes.refused;
    }
    const first = readPlan(file, terminal);
    const second = secondFile === undefined ? first : readPlan(secondFile, terminal);
    if (first === null || second === null) return exitCodes.refused;
    const before = issuedAs(first, from, terminal);
    const after = issuedAs(second, to, terminal);
    if (before === null || after === null) return exitCodes.refused;
    const { evaluate } = createEvaluator();
    // Two states of one document follow a panel to another name by its place in it.
    const isSame = before.id === after.id;
    const stateOf = (plan: Plan) => (isSame ? followedPlan(plan, evaluate(plan)) : evaluate(plan));
    const changes = comparePlans(stateOf(before), stateOf(after));
    terminal.print(
      options.has('--json')
        ? `${JSON.stringify({ changes }, null, 2)}\n`
        : compareReport({ before, after }, changes, terminal.columns),
    );
    return changes.length === 0 ? exitCodes.ok : exitCodes.changed;
  },
};

/** The plan as it was issued under a name, or as it stands where none is given; null, with a complaint, where it has no such revision. */
function issuedAs(plan: Plan, name: string | undefined, terminal: Terminal): Plan | null {
  if (name === undefined) return plan;
  const revision = plan.revisions.find((issued) => issued.name.toLowerCase() === name.toLowerCase());
  if (revision !== undefined) return planOfContent(plan, revision.content);
  const known = plan.revisions.map((issued) => issued.name).join(', ');
  terminal.complain(`${plan.name} has no revision ${name}; it has ${known === '' ? 'none' : known}\n`);
  return null;
}
