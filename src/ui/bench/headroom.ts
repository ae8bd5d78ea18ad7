import type { Check } from '../../calc/chapter';
import type { Evaluation } from '../../calc/evaluation';
import type { Plan } from '../../plan/plan';
import type { DisplayOptions } from '../../units/display-options';
import { formatQuantity } from '../../units/format-quantity';
import type { PageId } from '../state/pages';
import type { Format } from '../widgets/use-format';
import { formatMoneyShort } from './format-money-short';

/** One cell of the strip: what is left of something that matters. */
export interface HeadroomCell {
  readonly key: string;
  readonly title: string;
  /** '1.1 m left', '18 A over', 'not stated', or a dash where there is nothing to measure. */
  readonly left: string;
  /** What it is left of. */
  readonly detail: string;
  /** quiet: nobody stated the limit, or there is nothing to measure. */
  readonly status: 'quiet' | 'pass' | 'watch' | 'stop';
  readonly page: PageId;
  /** Share left, for choosing the worst among equals; Infinity where quiet. */
  readonly leftShare: number;
}

interface Budget {
  readonly key: string;
  readonly title: string;
  readonly page: PageId;
  readonly used: number | null;
  readonly limit: number | null;
  readonly write: (figure: number) => string;
  readonly detail?: string;
  /** Checks that judge it: the id itself, or its beginning up to a dot. */
  readonly judgedBy: readonly string[];
}

/** '525 of 640 A': the unit once where both have the same; '€36.1M of €3.40M', since millions are no unit. */
function usedOf(used: string, limit: string): string {
  const unit = /\s[^\d'"]+$/.exec(limit)?.[0];
  const plain = unit !== undefined && used.endsWith(unit) ? used.slice(0, -unit.length) : used;
  return `${plain} of ${limit}`;
}

/** As the checks that judge it say; a budget that no check judges stops where it is exceeded. */
function statusOf(budget: Budget, left: number, checks: readonly Check[]): 'pass' | 'watch' | 'stop' {
  const judging = checks.filter(({ id }) =>
    budget.judgedBy.some((judge) => id === judge || id.startsWith(`${judge}.`)),
  );
  if (judging.some((check) => check.severity === 'stop')) return 'stop';
  if (judging.some((check) => check.severity === 'watch')) return 'watch';
  return judging.length === 0 && left < 0 ? 'stop' : 'pass';
}

function cellOf(budget: Budget, checks: readonly Check[]): HeadroomCell {
  const { key, title, page, used, limit, write } = budget;
  const quiet = { key, title, page, status: 'quiet', leftShare: Number.POSITIVE_INFINITY } as const;
  if (used === null) return { ...quiet, left: '–', detail: budget.detail ?? 'nothing to measure' };
  if (limit === null) return { ...quiet, left: 'not stated', detail: `${write(used)} needed` };
  const left = limit - used;
  const leftShare = limit > 0 ? left / limit : left;
  const detail = budget.detail ?? usedOf(write(used), write(limit));
  const words = left < 0 ? `${write(-left)} over` : `${write(left)} left`;
  return { key, title, page, left: words, detail, status: statusOf(budget, left, checks), leftShare };
}

function ownedOf(plan: Plan, itemId: string): number | null {
  return plan.wish.stock.find((item) => item.itemId === itemId)?.owned ?? null;
}

/** Processors in use against those owned; null limit where nobody stated how many are. */
function processorsOwned(plan: Plan, { zones }: Evaluation) {
  const ids = [...new Set(zones.results.zones.map((zone) => zone.processorId))];
  const owned = ids.map((id) => ownedOf(plan, id));
  const known = owned.filter((count) => count !== null);
  const stated = ids.length > 0 && known.length === ids.length;
  return { ids, used: zones.results.processors, owned: stated ? known.reduce((sum, count) => sum + count, 0) : null };
}

/** Ports of the processors in use, and how many of them carry a run. */
function portsThere({ zones, ports }: Evaluation): number {
  return zones.results.zones.reduce((sum, zone) => {
    const surface = ports.results.surfaces.find((one) => one.surfaceId === zone.surfaceId);
    return sum + (surface?.portsAProcessor ?? 0);
  }, 0);
}

/** Largest share of its processor's pixels that a zone takes; null without zones. */
function fullestProcessor({ zones, ports }: Evaluation): { readonly used: number; readonly limit: number } | null {
  let worst: { readonly used: number; readonly limit: number } | null = null;
  for (const zone of zones.results.zones) {
    const limit = ports.results.surfaces.find((one) => one.surfaceId === zone.surfaceId)?.processorPixels ?? 0;
    const used = zone.canvasWidth * zone.canvasHeight;
    if (limit > 0 && (!worst || used / limit > worst.used / worst.limit)) worst = { used, limit };
  }
  return worst;
}

function fullestRun({ runs }: Evaluation): string | null {
  const { runs: all } = runs.results;
  let worst = all[0];
  for (const run of all) if (worst && run.share > worst.share) worst = run;
  return worst ? `${worst.count} panels, ${worst.port}` : null;
}

function budgetsOf(plan: Plan, evaluation: Evaluation, format: Format, options: DisplayOptions): Budget[] {
  const { headline, power, heat, materials } = evaluation;
  const room = evaluation.walls.checks.find((check) => check.id === 'walls.hall-fit');
  const processor = fullestProcessor(evaluation);
  const owned = processorsOwned(plan, evaluation);
  const leg = power.results.legs.filter((one) => one.leg !== 'N').toSorted((a, b) => b.currentA - a.currentA)[0];
  const distro = plan.catalogue.distros.find((one) => one.id === plan.power.distroId);
  const count = (figure: number) => format(figure, 'count');
  const share = (figure: number) => format(figure, 'share');
  const amperes = (figure: number) => format(figure, 'A');
  const money = (figure: number) => formatMoneyShort(figure, options);
  const fullest = fullestRun(evaluation);
  return [
    {
      key: 'room',
      title: 'Room to the walls',
      page: 'walls',
      used: room?.measured ?? null,
      limit: room?.limit ?? null,
      write: (mm) => format(mm, 'mm'),
      judgedBy: ['walls.hall-fit'],
    },
    {
      key: 'port',
      title: 'Fullest port',
      page: 'runs',
      used: headline.fullestPortShare,
      limit: headline.fullestPortShare === null ? null : 1,
      write: share,
      ...(fullest === null ? {} : { detail: fullest }),
      judgedBy: ['runs.load', 'ports.one-panel'],
    },
    {
      key: 'processor-pixels',
      title: 'Processor pixels',
      page: 'zones',
      used: processor === null ? null : processor.used / processor.limit,
      limit: processor === null ? null : 1,
      write: share,
      ...(processor === null ? {} : { detail: usedOf(format(processor.used, 'px'), format(processor.limit, 'px')) }),
      judgedBy: ['zones.fit'],
    },
    {
      key: 'ports',
      title: 'Ports',
      page: 'runs',
      used: headline.portsUsed,
      limit: portsThere(evaluation),
      write: count,
      judgedBy: ['runs.ports', 'runs.breakouts'],
    },
    {
      key: 'processors',
      title: 'Processors owned',
      page: 'zones',
      used: owned.used,
      limit: owned.owned,
      write: count,
      judgedBy: owned.ids.map((id) => `wish.stock.${id}`),
    },
    {
      key: 'leg',
      title: 'Worst leg',
      page: 'power',
      used: leg?.currentA ?? null,
      limit: leg?.limitA ?? null,
      write: amperes,
      ...(leg?.limitA == null ? {} : { detail: `${usedOf(amperes(leg.currentA), amperes(leg.limitA))}, ${leg.leg}` }),
      judgedBy: ['power.service'],
    },
    {
      key: 'circuits',
      title: 'Circuits',
      page: 'power',
      used: headline.circuits,
      limit: distro ? distro.circuits * power.results.distros.length : null,
      write: count,
      judgedBy: ['power.circuit', 'power.distro-circuits'],
    },
    {
      key: 'cooling',
      title: 'Cooling',
      page: 'heat',
      used: heat.results.fullWhiteW,
      limit: plan.wish.coolingW,
      write: (watts) => format(watts, 'W'),
      judgedBy: ['heat.cooling'],
    },
    {
      key: 'budget',
      title: 'Budget',
      page: 'materials',
      used: materials.results.priceToGet,
      limit: plan.wish.budget,
      write: money,
      judgedBy: ['wish.budget'],
    },
  ];
}

/** What is left of what matters, in the order of the strip. */
export function findHeadroom(plan: Plan, evaluation: Evaluation, options: DisplayOptions): readonly HeadroomCell[] {
  const format: Format = (value, unit) => (value === null ? 'not known' : formatQuantity(value, unit, options));
  const budgets = budgetsOf(plan, evaluation, format, options);
  const nothing = evaluation.surfaces.total === 0;
  return budgets.map((budget) => cellOf(nothing ? { ...budget, used: null } : budget, evaluation.checks));
}

const rank = { stop: 0, watch: 1, pass: 2, quiet: 3 } as const;

/** The cell that a narrow screen shows: the worst mark, and among equals the least share left. */
export function worstCell(cells: readonly HeadroomCell[]): HeadroomCell | null {
  const sorted = cells.toSorted((a, b) => rank[a.status] - rank[b.status] || a.leftShare - b.leftShare);
  return sorted[0] ?? null;
}
