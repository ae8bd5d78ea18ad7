import { produce } from 'immer';
import { counted } from '../../units/counted';
import { countResting } from '../count-resting';
import type { Panel } from '../panel';
import type { Plan } from '../plan';
import type { Wall } from '../wall';
import { admit } from './admit';
import type { CommandDefinition } from './command';

export interface UseBuildArguments {
  /** Takes the place of the wall of the same id, or is added where there is none. */
  readonly wall: Wall;
  /** The wall that was there is kept as an alternative by this id and name. */
  readonly keepOldAs?: { readonly id: string; readonly name: string } | null;
  /** A panel of the catalogue that the wall is made of and the plan does not have yet. */
  readonly addsPanel?: Panel;
  /** The processor that drives it: the stage's from now on, and the wall's where it had its own. */
  readonly processorId?: string;
}

/**
 * Puts a wall that was found in place of the one that stands, in one step. Holes of the old wall come along; these and hand
 * changes that have no place on the new one rest in the file and return when they apply again.
 */
export const useBuild: CommandDefinition<'use-build', UseBuildArguments> = {
  name: 'use-build',
  label: (plan, args) => {
    const old = plan.walls.find(({ id }) => id === args.wall.id);
    const next = withHolesOf(old, args.wall);
    const { handChanges, holes } = countResting(next, plan.handChanges);
    const resting = [
      ...(handChanges > 0 ? [counted(handChanges, 'change by hand', 'changes by hand')] : []),
      ...(holes > 0 ? [counted(holes, 'hole')] : []),
    ];
    const rests = resting.length === 0 ? '' : `; at rest: ${resting.join(', ')}`;
    return old === undefined ? `add ${nameOf(next)}` : `replace ${nameOf(old)} by the build found${rests}`;
  },
  apply(plan, { wall, keepOldAs, addsPanel, processorId }) {
    const place = plan.walls.findIndex(({ id }) => id === wall.id);
    return admit(
      plan,
      produce(plan, (draft) => {
        if (addsPanel !== undefined && !hasPanel(plan, addsPanel.id)) draft.catalogue.panels.push(addsPanel);
        if (processorId !== undefined) {
          draft.signal.processorId = processorId;
          for (const own of draft.signal.bySurface) if (own.surfaceId === wall.id) own.processorId = processorId;
        }
        const old = plan.walls[place];
        if (old === undefined) {
          draft.walls.push(wall);
          return;
        }
        draft.walls[place] = withHolesOf(old, wall);
        if (keepOldAs) draft.alternatives.push({ ...keepOldAs, wall: old });
      }),
    );
  },
};

function hasPanel(plan: Plan, panelId: string): boolean {
  return plan.catalogue.panels.some(({ id }) => id === panelId);
}

function withHolesOf(old: Wall | undefined, wall: Wall): Wall {
  const taken = new Set(wall.holes.map(({ id }) => id));
  const carried = old?.holes.filter(({ id }) => !taken.has(id)) ?? [];
  return carried.length === 0 ? wall : { ...wall, holes: [...wall.holes, ...carried] };
}

function nameOf({ letter, name }: Wall): string {
  return name === '' ? `wall ${letter}` : `${letter} ${name}`;
}
