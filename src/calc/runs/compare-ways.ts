import type { WayOfWiring } from '../../plan/hand-change';
import { portsARun } from '../ports/outlets';
import { bestOfWay } from './best-of-way';
import type { WayFigures } from './run-result';
import type { ZoneWiring } from './search/zone-wiring';
import { wayKey } from './way-key';
import type { WiredZone } from './wire-zones';

/** Zones of one shape, which all have the same ways. */
interface Alike {
  readonly zone: WiredZone;
  readonly count: number;
  /** The zone's own wirings by the key of their way. */
  readonly wirings: ReadonlyMap<string, readonly ZoneWiring[]>;
}

/**
 * Every way of wiring a surface with the figures that it comes to over all zones, in the order of merit of a regular wiring:
 * what fits, fewer ports, fewer figures. The chosen way comes with the figures of the wiring as it is, whatever way its
 * zones are wired in; for any other a zone that does not know the way counts as the search would wire it.
 */
export function compareWays(surfaceId: string, zones: readonly WiredZone[]): WayFigures[] {
  if (zones.length === 0) return [];
  const alike = groupAlike(zones);
  const ways = new Map<string, WayOfWiring>();
  for (const { zone } of alike) {
    for (const { way } of [zone.wiring, ...zone.answer.ways]) ways.set(wayKey(way), way);
  }
  const used = mostUsed(zones);
  const figures = [...ways].map(([key, way]) => figuresOf(surfaceId, way, key, alike, key === used));
  return figures.sort(
    (a, b) =>
      a.processorsShort - b.processorsShort ||
      a.entriesOutOfReach - b.entriesOutOfReach ||
      a.ports - b.ports ||
      a.figures - b.figures ||
      a.fullestShare - b.fullestShare,
  );
}

function groupAlike(zones: readonly WiredZone[]): Alike[] {
  const groups = new Map<unknown, Map<ZoneWiring, Alike>>();
  for (const zone of zones) {
    const group = groups.get(zone.answer) ?? new Map<ZoneWiring, Alike>();
    groups.set(zone.answer, group);
    const known = group.get(zone.wiring);
    const wirings = known?.wirings ?? wiringsByWay(zone.answer.ways);
    group.set(zone.wiring, { zone, count: (known?.count ?? 0) + 1, wirings });
  }
  return [...groups.values()].flatMap((group) => [...group.values()]);
}

function wiringsByWay(ways: readonly ZoneWiring[]): Map<string, ZoneWiring[]> {
  const byWay = new Map<string, ZoneWiring[]>();
  for (const wiring of ways) {
    const key = wayKey(wiring.way);
    byWay.set(key, [...(byWay.get(key) ?? []), wiring]);
  }
  return byWay;
}

/** The way by which most panels are wired. */
function mostUsed(zones: readonly WiredZone[]): string {
  const panels = new Map<string, number>();
  for (const { zone, wiring } of zones) {
    const key = wayKey(wiring.way);
    panels.set(key, (panels.get(key) ?? 0) + zone.panels);
  }
  return [...panels].reduce((most, next) => (next[1] > most[1] ? next : most))[0];
}

function figuresOf(
  surfaceId: string,
  way: WayOfWiring,
  key: string,
  alike: readonly Alike[],
  chosen: boolean,
): WayFigures {
  const parts = alike.map(({ zone, count, wirings }) => {
    const there = zone.ports.runsAProcessor;
    const asIs = chosen || wayKey(zone.wiring.way) === key ? zone.wiring : null;
    return { wiring: asIs ?? bestOfWay(wirings.get(key) ?? [], there) ?? zone.searched, count, there };
  });
  const sum = (value: (wiring: ZoneWiring) => number) =>
    parts.reduce((total, { wiring, count }) => total + value(wiring) * count, 0);
  const most = (value: (wiring: ZoneWiring) => number) => Math.max(...parts.map(({ wiring }) => value(wiring)));
  const capacity = alike[0]!.zone.ports.capacityPixels;
  return {
    surfaceId,
    way,
    ports: sum(({ ports }) => ports) * portsARun(alike[0]!.zone.ports),
    processorsShort: parts.reduce((total, { wiring, count, there }) => total + (wiring.ports > there ? count : 0), 0),
    fewest: Math.min(...parts.map(({ wiring }) => wiring.fewestPanels)),
    most: most(({ mostPanels }) => mostPanels),
    fullestShare: capacity > 0 ? most(({ fullestPixels }) => fullestPixels) / capacity : 0,
    highestEntryMm: most(({ highestEntryMm }) => highestEntryMm ?? 0),
    entriesOutOfReach: sum(({ entriesOutOfReach }) => entriesOutOfReach),
    figures: new Set(parts.flatMap(({ wiring }) => wiring.figureCodes)).size,
    cableMm: sum(({ cableMm }) => cableMm),
    chosen,
  };
}
