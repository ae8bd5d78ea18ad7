import type { Evaluation } from '../calc/evaluation';
import { listThings } from '../calc/log/list-things';
import { stateOfLog } from '../calc/log/log-state';
import type { Plan } from '../plan/plan';
import { outputsOf } from './outputs-of';
import type { Schedule } from './schedule';
import { scheduleAddresses } from './schedule-addresses';
import { scheduleCircuits } from './schedule-circuits';
import { scheduleFailures } from './schedule-failures';
import { scheduleLegs } from './schedule-legs';
import { scheduleLinks } from './schedule-links';
import { scheduleLog } from './schedule-log';
import { scheduleMasses } from './schedule-masses';
import { scheduleMaterials } from './schedule-materials';
import { scheduleNodes } from './schedule-nodes';
import { scheduleNodesDelay } from './schedule-nodes-delay';
import { schedulePanels } from './schedule-panels';
import { schedulePixelMap } from './schedule-pixel-map';
import { schedulePlan } from './schedule-plan';
import { scheduleRings } from './schedule-rings';
import { scheduleRuns } from './schedule-runs';
import { scheduleSync } from './schedule-sync';
import { scheduleZones } from './schedule-zones';
import { stageParts } from './stage-parts';

/** A schedule that a plan has. */
export interface ListedSchedule {
  /** Name for its file, told apart from all others': 'circuits'. */
  readonly name: string;
  /** As people read it: 'Circuits by distro'. */
  readonly label: string;
  readonly schedule: Schedule;
}

/**
 * Every schedule of a plan that has a row, from the plan's own figures on in the order of chapters; the long ones, a row for each
 * panel, last. The first two are always there.
 */
export function listSchedules(
  plan: Plan,
  evaluation: Evaluation,
): readonly [ListedSchedule, ListedSchedule, ...ListedSchedule[]] {
  const { surfaces, zones } = evaluation;
  const parts = stageParts(plan, evaluation);
  const outputs = outputsOf(evaluation);
  const { nodes, delays, sync, addresses } = evaluation.nodes.results;
  const others = [
    scheduleMaterials(evaluation.materials.results),
    scheduleRings(parts.walls),
    scheduleZones(parts),
    scheduleRuns(parts),
    scheduleNodes({ surfaces, zones: zones.results.zones, nodes }),
    scheduleNodesDelay({ surfaces, delays }),
    scheduleSync(plan.sync.reference, sync),
    scheduleAddresses(plan.addresses.prefixBits, addresses),
    scheduleLinks({ nodes, links: evaluation.links.results.surfaces }),
    scheduleCircuits(parts),
    scheduleMasses(surfaces, evaluation.masses.results),
    scheduleFailures(evaluation.faults.results),
    scheduleLog(stateOfLog(surfaces, listThings(parts), plan.log)),
    schedulePanels(parts),
    schedulePixelMap(outputs, outputs.fed),
  ];
  return [
    listed(schedulePlan(plan, evaluation)),
    listed(scheduleLegs(parts)),
    ...others.filter(({ count }) => count > 0).map(listed),
  ];
}

function listed(schedule: Schedule): ListedSchedule {
  return { name: schedule.id, label: schedule.title, schedule };
}
