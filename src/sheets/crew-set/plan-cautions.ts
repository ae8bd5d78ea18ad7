import { cautions } from '../../calc/cautions';
import type { Evaluation } from '../../calc/evaluation';
import type { Plan } from '../../plan/plan';

type Cautioned = Pick<Evaluation, 'walls' | 'ceilings' | 'masses'>;

/** The cautions that concern what stands and hangs in a plan, the general one first. */
export function planCautions(plan: Pick<Plan, 'ceilings' | 'signal'>, evaluation: Cautioned): readonly string[] {
  const walls = evaluation.walls.results.walls.filter(({ table }) => table.count > 0);
  const ceilings = evaluation.ceilings.results.ceilings.filter(({ table }) => table.count > 0);
  const masses = evaluation.masses.results.surfaces;
  const moving = plan.ceilings.filter(({ height }) => height.highestMm > height.lowestMm).map(({ id }) => id);
  const concerned: Readonly<Record<keyof typeof cautions, boolean>> = {
    general: true,
    electricity: walls.length + ceilings.length > 0,
    stackedLoad: masses.some(({ frameKg }) => frameKg !== null),
    hangingLoad: ceilings.length > 0 || masses.some(({ frameKg }) => frameKg === null),
    height: ceilings.length > 0 || walls.some(({ baseMm, heightMm }) => baseMm + heightMm > plan.signal.reachMm),
    movingParts: ceilings.some(({ ceilingId }) => moving.includes(ceilingId)),
    exits: ceilings.length > 0 && walls.some(({ openingMm }) => openingMm !== null),
  };
  return (Object.keys(cautions) as (keyof typeof cautions)[])
    .filter((name) => concerned[name])
    .map((name) => cautions[name]);
}
