import type { Panel } from '../../plan/panel';
import type { Plan } from '../../plan/plan';
import type { Wall } from '../../plan/wall';
import { toMicrometres } from '../surfaces/micrometres';
import { hallFit } from '../walls/hall-fit';
import { layOutWalls } from '../walls/lay-out-walls';
import { letsIn } from '../walls/lets-in';
import { spaceNeeded } from '../walls/space-needed';
import type { WallResult } from '../walls/wall-result';
import { askedOpening } from './asked-opening';
import type { Build, PanelBuilds } from './build';
import { type Course, listCourses } from './list-courses';
import { processorFor } from './processor-for';
import { latticeRows } from './rings/lattice-rows';

function wallOf({ walls: [old] }: Plan, panel: Panel, course: Course, rows: number): Wall {
  const stand = old ?? {
    id: 'wall-found',
    letter: 'A',
    name: 'Wall',
    place: { xMm: 0, yMm: 0, turnDeg: 0 },
    baseMm: 0,
    support: 'stands' as const,
    holes: [],
  };
  return {
    id: stand.id,
    letter: stand.letter,
    name: stand.name,
    place: stand.place,
    baseMm: stand.baseMm,
    support: stand.support,
    path: course.path.map((segment, i) => ({ ...segment, id: old?.path[i]?.id ?? `found-${i + 1}` })),
    bands: [{ id: old?.bands[0]?.id ?? 'found-band', panelId: panel.id, rows, turnDeg: 0 }],
    holes: stand.holes,
  };
}

/** Room left in the hall with every wall in it, as the check of the walls measures it; null where the hall is not stated. */
function roomMm({ hall }: Plan['wish'], walls: readonly WallResult[]): number | null {
  if (hall.lengthMm === null || hall.widthMm === null) return null;
  const { spareMm, fits } = hallFit(spaceNeeded(walls, hall.walkwayMm), hall.lengthMm, hall.widthMm);
  return fits ? Math.max(0, spareMm) : spareMm;
}

/** A course with its rows, laid out as the wall will be. Null where no such wall can stand in a plan. */
function buildOf(plan: Plan, others: readonly WallResult[], panel: Panel, course: Course, rows: number): Build | null {
  const wall = wallOf(plan, panel, course, rows);
  const [laid] = layOutWalls([wall], [panel]).walls;
  if (laid === undefined || laid.table.count === 0) return null;
  const panels = laid.table.count;
  const { heightMm } = laid;
  const { highestStackMm } = panel.lock;
  const { clearHeightMm } = plan.wish.hall;
  const processorId = processorFor(plan, panel);
  const joints = course.path
    .map(({ jointDeg, mixed }) => `${jointDeg}${mixed ? `+${mixed.count}x${mixed.jointDeg}` : ''}`)
    .join(',');
  return {
    key: `${panel.id} ${course.columns}x${rows} ${joints}`,
    panelId: panel.id,
    panelName: panel.name,
    columns: course.columns,
    rows,
    panels,
    acrossMm: course.acrossMm,
    openingMm: course.openingMm,
    heightMm,
    worstMm: course.worstMm,
    mixed: course.path.some(({ mixed }) => mixed !== null),
    roomMm: roomMm(plan.wish, [laid, ...others]),
    areaM2: laid.areaM2,
    pixels: laid.pixels,
    massKg: panels * panel.massKg,
    price: panel.purchase.price === null ? null : panels * panel.purchase.price,
    withinStack: highestStackMm === null || heightMm <= highestStackMm,
    underHall:
      clearHeightMm === null || toMicrometres(wall.baseMm) + toMicrometres(heightMm) <= toMicrometres(clearHeightMm),
    letsIn: letsIn({ index: 0, wall, result: laid, shapes: new Map([[panel.id, panel]]) }, plan.wish.vehicle),
    missMm: course.missMm + Math.abs(heightMm - plan.wish.wall.heightMm!),
    command: { name: 'use-build', args: { wall, ...(processorId === null ? {} : { processorId }) } },
  };
}

/** Whether a build breaks what can be told before signal and power: the hall, its clear height, the panel's stack, the way in. */
function faultsOf({ roomMm: room, withinStack, underHall, letsIn: open }: Build): number {
  return Number(room !== null && room < 0) + Number(!withinStack) + Number(!underHall) + Number(!open);
}

/** First what fits hall, lock and what must drive in, then what misses the wish least. */
function byMerit(a: Build, b: Build): number {
  return faultsOf(a) - faultsOf(b) || a.missMm - b.missMm || a.panels - b.panels || a.key.localeCompare(b.key, 'en');
}

function buildsOf(plan: Plan, others: readonly WallResult[], panel: Panel): PanelBuilds {
  const base = { panelId: panel.id, panelName: panel.name };
  const { wall: wished } = plan.wish;
  const { acrossMm, heightMm } = wished;
  if (acrossMm === null) return { ...base, builds: [], refused: 'The wish states no size across.' };
  if (heightMm === null) return { ...base, builds: [], refused: 'The wish states no height.' };
  const { openingMm } = askedOpening(plan.wish);
  const courses = listCourses({ ...wished, openingMm }, acrossMm, panel);
  if (courses.length === 0) return { ...base, builds: [], refused: 'Its lock takes no joint that makes such a ring.' };
  const rows = latticeRows(heightMm, [panel.size.heightMm]).flatMap(({ down, up }) => [down?.count, up?.count]);
  const counts = [...new Set(rows)].filter((count): count is number => count !== undefined);
  const builds = courses.flatMap((course) =>
    counts.flatMap((count) => buildOf(plan, others, panel, course, count) ?? []),
  );
  if (builds.length === 0) return { ...base, builds, refused: 'No plan holds so many of its panels.' };
  return { ...base, builds: builds.sort(byMerit), refused: null };
}

/**
 * Which panel, which ring: for every panel of the catalogue the walls that come nearest the wish, both whole heights of each,
 * best first. Panels whose best build keeps hall and stack come first, then the panels of the cheaper wall, those without a
 * price last.
 */
export function findBuilds(plan: Plan): readonly PanelBuilds[] {
  const others = layOutWalls(plan.walls.slice(1), plan.catalogue.panels).walls.filter(({ columns }) => columns > 0);
  const price = ({ builds }: PanelBuilds) => builds[0]?.price ?? Number.MAX_VALUE;
  const misfits = ({ builds: [best] }: PanelBuilds) => (best === undefined ? 2 : Number(faultsOf(best) > 0));
  return plan.catalogue.panels
    .map((panel) => buildsOf(plan, others, panel))
    .sort((a, b) => misfits(a) - misfits(b) || price(a) - price(b));
}
