import type { HandChange } from '../../plan/hand-change';
import type { Check, Unit } from '../chapter';
import type { SurfaceTable } from '../surfaces/surface-table';
import { surfaceWords } from '../surfaces/surface-words';
import { chooseWayFix } from './choose-way-fix';
import { compareWays } from './compare-ways';
import type { AnchorGround } from './locate-anchor';
import type { SurfaceRuns, WayFigures } from './run-result';
import { wayInWords } from './way-in-words';
import type { WiredZone } from './wire-zones';

/** A count on which another way may be better, and how much better it must be to be worth a word. */
interface Count {
  readonly id: string;
  readonly unit: Unit;
  readonly of: (way: WayFigures) => number;
  readonly isWorthIt: (now: number, other: number) => boolean;
  readonly sentence: (now: number, other: number) => string;
}

/** Shares and lengths that differ by less are not offered (common practice, no source). */
const leastShare = 0.05;
const leastCableShare = 0.1;

const counts: readonly Count[] = [
  {
    id: 'ports',
    unit: 'count',
    of: ({ ports }) => ports,
    isWorthIt: (now, other) => other < now,
    sentence: (now, other) =>
      `needs ${now - other === 1 ? 'one port' : '{fewer} ports'} fewer: {limit} instead of {measured}.`,
  },
  {
    id: 'free',
    unit: 'share',
    of: ({ fullestShare }) => fullestShare,
    isWorthIt: (now, other) => other <= now - leastShare,
    sentence: () => 'leaves more free on the fullest port: {limit} of it used instead of {measured}.',
  },
  {
    id: 'figures',
    unit: 'count',
    of: ({ figures }) => figures,
    isWorthIt: (now, other) => other < now,
    sentence: () => 'repeats more: figures of run {limit} instead of {measured}.',
  },
  {
    id: 'cable',
    unit: 'mm',
    of: ({ cableMm }) => cableMm,
    isWorthIt: (now, other) => other < now && other <= now * (1 - leastCableShare),
    sentence: () => 'takes less cable: {limit} instead of {measured}, by estimate.',
  },
];

/**
 * Offers of ways that are better on one count than the way by which a surface is wired and break no limit that it keeps. Of
 * those that are equally good on the count the most meritorious, which is the first, is offered.
 */
export function offerWays(
  surface: SurfaceRuns,
  table: Pick<SurfaceTable, 'kind' | 'letter'>,
  zones: readonly WiredZone[],
  changes: readonly HandChange[],
  ground: AnchorGround,
): Check[] {
  const on = surfaceWords(table);
  const now = surface.ways.find(({ chosen }) => chosen);
  if (now === undefined) return [];
  return counts.flatMap((count) => {
    const best = betterWay(surface.ways, count);
    if (best === null) return [];
    const fix = chooseWayFix('Use it', best.way, zones, changes, ground, (after) => {
      const ways = compareWays(surface.surfaceId, after);
      return betterWay(ways, count) === null && ways.some((way) => way.chosen && keepsLimitsOf(way, now));
    });
    const { words, values } = wayInWords(best.way);
    const fewer = count.of(now) - count.of(best);
    return [
      {
        id: `runs.offer-${count.id}.${table.letter}`,
        chapter: 'runs',
        severity: 'offer',
        measured: count.of(now),
        limit: count.of(best),
        unit: count.unit,
        where: [{ kind: 'surface', name: table.letter }],
        sentence: `${words} on ${on} ${count.sentence(count.of(now), count.of(best))}`,
        values: { ...values, fewer: { value: fewer, unit: count.unit } },
        ...(fix === null ? {} : { fix }),
      } satisfies Check,
    ];
  });
}

/** The way that is best on a count among those that break no limit which the chosen one keeps; null where it is not worth a word. */
function betterWay(ways: readonly WayFigures[], count: Count): WayFigures | null {
  const now = ways.find(({ chosen }) => chosen);
  if (now === undefined) return null;
  const best = ways
    .filter((way) => !way.chosen && keepsLimitsOf(way, now))
    .reduce<WayFigures | null>(
      (least, next) => (least === null || count.of(next) < count.of(least) ? next : least),
      null,
    );
  return best !== null && count.isWorthIt(count.of(now), count.of(best)) ? best : null;
}

function keepsLimitsOf(way: WayFigures, now: WayFigures): boolean {
  return way.processorsShort <= now.processorsShort && way.entriesOutOfReach <= now.entriesOutOfReach;
}
