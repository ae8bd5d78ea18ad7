import { applyCommand } from '../../plan/commands';
import type { Plan } from '../../plan/plan';
import type { Evaluation } from '../evaluation';
import type { Build, ExactFigures } from './build';

/** A build put in the plan and evaluated whole: what signal and power need; null where the plan cannot take it. */
export function exactFigures(plan: Plan, build: Build, evaluate: (plan: Plan) => Evaluation): ExactFigures | null {
  const outcome = applyCommand(plan, build.command);
  if ('refused' in outcome) return null;
  const { headline, checks, zones } = evaluate(outcome.plan);
  const isWired = build.command.name === 'use-build' && hasZones(zones.results.surfaces, build.command.args.wall.id);
  return {
    processors: isWired ? headline.processors : null,
    ports: isWired ? headline.portsUsed : null,
    worstLegA: headline.worstLegA,
    circuits: headline.circuits,
    priceTotal: headline.priceTotal,
    stops: checks.filter((check) => check.severity === 'stop'),
  };
}

function hasZones(surfaces: Evaluation['zones']['results']['surfaces'], wallId: string): boolean {
  return surfaces.some(({ surfaceId, zones }) => surfaceId === wallId && zones > 0);
}
