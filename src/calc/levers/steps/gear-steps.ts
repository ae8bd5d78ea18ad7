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
    return added === undefined ? entry : { ...entry, obtainable: (entry.obtainable ?? 0) + added };
  });
}

interface Short {
  readonly line: MaterialLine;
  readonly there: number;
  readonly missing: number;
}

/** Items of which more is needed than there is; how many can be had, where nobody stated it, counts as none. */
function shortItems(plan: Plan, evaluation: Evaluation, items: readonly { readonly id: string }[]): readonly Short[] {
  const ids = new Set(items.map(({ id }) => id));
  const stockOf = new Map(plan.wish.stock.map((entry) => [entry.itemId, entry]));
  return evaluation.materials.results.lines
    .filter(({ itemId }) => ids.has(itemId))
    .map((line) => {
      const stock = stockOf.get(line.itemId);
      return { line, there: (stock?.owned ?? 0) + (stock?.obtainable ?? 0), missing: shortage(line, stock) };
    })
    .filter(({ missing }) => missing > 0);
}

/** The step that gets so many more of each item by its id; `choice` names it where several kinds are got at once. */
function getMore(plan: Plan, short: readonly Short[], more: ReadonlyMap<string, number>, label: string): LeverStep {
  const added = [...more.values()].reduce((sum, count) => sum + count, 0);
  const there = short.reduce((sum, item) => sum + item.there, 0);
  const buys = short.reduce<number | null>((sum, { line }) => {
    const count = more.get(line.itemId) ?? 0;
    return sum === null || (line.priceEach === null && count > 0) ? null : sum + count * (line.priceEach ?? 0);
  }, 0);
  return {
    from: { value: there, unit: 'count' },
    to: { value: there + added, unit: 'count' },
    ...(short.length > 1 && {
      choice: short.map(({ line }) => `${line.name}: ${more.get(line.itemId) ?? 0} more`).join('; '),
    }),
    command: {
      name: 'set-fields',
      args: { fields: [{ path: ['wish', 'stock'], value: withMore(plan, more) }], label },
    },
    buys,
  };
}

/**
 * More of what is short, as counts that can be had: one by one where one kind is short, else all that is missing at once,
 * since each kind short by one stops the plan.
 */
export function gearSteps(
  plan: Plan,
  evaluation: Evaluation,
  items: readonly { readonly id: string }[],
  label: string,
): readonly LeverStep[] {
  const short = shortItems(plan, evaluation, items);
  const [first] = short;
  if (first === undefined) return [];
  const step = (counts: readonly (readonly [string, number])[]) => getMore(plan, short, new Map(counts), label);
  if (short.length > 1 || first.missing > furthest)
    return [step(short.map(({ line, missing }) => [line.itemId, missing]))];
  return Array.from({ length: first.missing }, (_, i) => step([[first.line.itemId, i + 1]]));
}

export function processorGearSteps(plan: Plan, evaluation: Evaluation): readonly LeverStep[] {
  return gearSteps(plan, evaluation, plan.catalogue.processors, 'processors to get');
}

export function breakoutGearSteps(plan: Plan, evaluation: Evaluation): readonly LeverStep[] {
  return gearSteps(plan, evaluation, plan.catalogue.breakouts, 'breakouts to get');
}

export function nodeGearSteps(plan: Plan, evaluation: Evaluation): readonly LeverStep[] {
  return gearSteps(plan, evaluation, plan.catalogue.nodes, 'render nodes to get');
}

/** Processors, breakouts and nodes together, where more than one of these is short and none would do alone. */
export function signalGearSteps(plan: Plan, evaluation: Evaluation): readonly LeverStep[] {
  const { processors, breakouts, nodes } = plan.catalogue;
  const kinds = [processors, breakouts, nodes].filter((items) => shortItems(plan, evaluation, items).length > 0);
  return kinds.length < 2 ? [] : gearSteps(plan, evaluation, kinds.flat(), 'signal equipment to get');
}

export function panelGearSteps(plan: Plan, evaluation: Evaluation): readonly LeverStep[] {
  return gearSteps(plan, evaluation, plan.catalogue.panels, 'panels to get');
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
