import type { Stock } from '../../../plan/catalogue';
import type { Plan } from '../../../plan/plan';
import type { Evaluation } from '../../evaluation';
import type { MaterialLine } from '../../materials/material-result';
import type { LeverStep } from '../lever';

/** Most items that a lever adds one by one. */
const furthest = 5000;

function shortage(line: MaterialLine, stock: Stock | undefined): number {
  if (!stock || stock.owned === null) return 0;
  return Math.max(0, line.needed - stock.owned - (stock.obtainable ?? 0));
}

function withMore(plan: Plan, more: ReadonlyMap<string, number>): Stock[] {
  return plan.wish.stock.map((entry) => {
    const added = more.get(entry.itemId);
    return added === undefined || entry.obtainable === null
      ? entry
      : { ...entry, obtainable: entry.obtainable + added };
  });
}

/** More of what is short (obtainable not stated counts as none): obtainable counts raised one by one (or, with several items short, by all that is missing). */
export function gearSteps(
  plan: Plan,
  evaluation: Evaluation,
  itemIds: ReadonlySet<string>,
  label: string,
): readonly LeverStep[] {
  const stockOf = new Map(plan.wish.stock.map((entry) => [entry.itemId, entry]));
  const short = evaluation.materials.results.lines
    .filter((line) => itemIds.has(line.itemId))
    .map((line) => ({ line, missing: shortage(line, stockOf.get(line.itemId)) }))
    .filter(({ missing }) => missing > 0);
  if (short.length === 0) return [];
  const missing = short.reduce((sum, item) => sum + item.missing, 0);
  const there = short.reduce(
    (sum, { line }) => sum + (stockOf.get(line.itemId)?.owned ?? 0) + (stockOf.get(line.itemId)?.obtainable ?? 0),
    0,
  );
  const step = (added: number, more: ReadonlyMap<string, number>): LeverStep => ({
    from: { value: there, unit: 'count' },
    to: { value: there + added, unit: 'count' },
    command: {
      name: 'set-fields',
      args: { fields: [{ path: ['wish', 'stock'], value: withMore(plan, more) }], label },
    },
    buys: short.reduce<number | null>((sum, { line }) => {
      const added = more.get(line.itemId) ?? 0;
      return sum === null || (line.priceEach === null && added > 0) ? null : sum + added * (line.priceEach ?? 0);
    }, 0),
  });
  const [first] = short;
  if (short.length > 1 || !first || missing > furthest)
    return [step(missing, new Map(short.map(({ line, missing }) => [line.itemId, missing])))];
  return Array.from({ length: missing }, (_, i) => step(i + 1, new Map([[first.line.itemId, i + 1]])));
}

export function processorGearSteps(plan: Plan, evaluation: Evaluation): readonly LeverStep[] {
  return gearSteps(plan, evaluation, new Set(plan.catalogue.processors.map((item) => item.id)), 'processors to get');
}

export function breakoutGearSteps(plan: Plan, evaluation: Evaluation): readonly LeverStep[] {
  return gearSteps(plan, evaluation, new Set(plan.catalogue.breakouts.map((item) => item.id)), 'breakouts to get');
}

export function panelGearSteps(plan: Plan, evaluation: Evaluation): readonly LeverStep[] {
  return gearSteps(plan, evaluation, new Set(plan.catalogue.panels.map((item) => item.id)), 'panels to get');
}

/** Every surface on another processor of the catalogue, cheapest first. */
export function otherProcessorSteps(plan: Plan, evaluation: Evaluation): readonly LeverStep[] {
  const used = new Set(evaluation.ports.results.surfaces.map((surface) => surface.processor?.id));
  return plan.catalogue.processors
    .filter((processor) => !used.has(processor.id))
    .sort((a, b) => (a.purchase.price ?? Number.MAX_VALUE) - (b.purchase.price ?? Number.MAX_VALUE))
    .map((processor) => ({
      from: { value: evaluation.zones.results.processors, unit: 'count' },
      to: { value: evaluation.zones.results.processors, unit: 'count' },
      choice: processor.name,
      command: {
        name: 'set-fields',
        args: {
          fields: [
            { path: ['signal', 'processorId'], value: processor.id },
            {
              path: ['signal', 'bySurface'],
              value: plan.signal.bySurface.map((entry) => ({ ...entry, processorId: processor.id })),
            },
          ],
          label: 'processor',
        },
      },
      buys: 0,
    }));
}
