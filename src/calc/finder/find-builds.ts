import type { Panel } from '../../plan/panel';
import type { Plan } from '../../plan/plan';
import type { Segment, Wall } from '../../plan/wall';
import type { Build, PanelBuilds } from './build';
import { processorFor } from './processor-for';
import { latticeRows } from './rings/lattice-rows';
import { listRings, type RingBuild } from './rings/list-rings';
import { wholeLines } from './rings/whole-lines';

const ringsAPanel = 6;
const mostColumns = 5000;

/** A ring or a flat wall before its rows are known. */
interface Course {
  readonly columns: number;
  readonly path: readonly Omit<Segment, 'id'>[];
  readonly acrossMm: number;
  readonly openingMm: number | null;
  readonly worstMm: number | null;
  readonly outsideMm: { readonly across: number; readonly along: number };
  readonly missMm: number;
}

function ringCourse(ring: RingBuild): Course {
  return {
    columns: ring.columns,
    path: ring.path,
    acrossMm: ring.insideDiameterMm,
    openingMm: ring.openingMm,
    worstMm: ring.worstMm,
    outsideMm: { across: ring.outsideAcrossMm, along: ring.outsideAlongMm },
    missMm: ring.missMm,
  };
}

function coursesOf({ wish }: Plan, { size, lock }: Panel): readonly Course[] {
  const acrossMm = wish.wall.acrossMm!;
  if (wish.wall.form === 'ring') {
    const given = {
      acrossMm,
      openingMm: wish.wall.openingMm ?? 0,
      columnWidthMm: size.widthMm,
      depthMm: size.depthMm,
      lockStepsDeg: lock.stepsDeg,
    };
    return listRings(given, ringsAPanel).map(ringCourse);
  }
  const { down, up } = wholeLines(acrossMm, size.widthMm, mostColumns);
  const lengths = [down, up].filter(
    (line, i, all) => line !== null && all.findIndex((one) => one?.count === line.count) === i,
  );
  return lengths.map(
    (line): Course => ({
      columns: line!.count,
      path: [{ columns: line!.count, jointDeg: 0, mixed: null, jointBeforeDeg: 0 }],
      acrossMm: line!.lengthMm,
      openingMm: null,
      worstMm: null,
      outsideMm: { across: line!.lengthMm, along: size.depthMm },
      missMm: Math.abs(line!.lengthMm - acrossMm),
    }),
  );
}

/** Room left by the hall, the build lying in it the better way round; null where the hall is not stated. */
function roomMm({ hall }: Plan['wish'], { across, along }: Course['outsideMm']): number | null {
  if (hall.lengthMm === null || hall.widthMm === null) return null;
  const { lengthMm, widthMm } = hall;
  const left = (a: number, b: number) => Math.min(lengthMm - a, widthMm - b) - 2 * hall.walkwayMm;
  return Math.max(left(across, along), left(along, across));
}

function wallOf(plan: Plan, panel: Panel, course: Course, rows: number): Wall {
  const old = plan.walls[0];
  const stand = old ?? {
    id: 'wall-found',
    letter: 'A',
    name: 'Wall',
    place: { xMm: 0, yMm: 0, turnDeg: 0 },
    baseMm: 0,
    support: 'stands' as const,
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
    holes: [],
  };
}

function buildOf(plan: Plan, panel: Panel, course: Course, rows: number): Build {
  const panels = course.columns * rows;
  const heightMm = (rows * Math.round(panel.size.heightMm * 1000)) / 1000;
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
    roomMm: roomMm(plan.wish, course.outsideMm),
    areaM2: (panels * panel.size.widthMm * panel.size.heightMm) / 1e6,
    pixels: panels * panel.pixels.wide * panel.pixels.high,
    massKg: panels * panel.massKg,
    price: panel.purchase.price === null ? null : panels * panel.purchase.price,
    withinStack: panel.lock.highestStackMm === null || heightMm <= panel.lock.highestStackMm,
    missMm: course.missMm + Math.abs(heightMm - plan.wish.wall.heightMm!),
    command: {
      name: 'use-build',
      args: { wall: wallOf(plan, panel, course, rows), ...(processorId === null ? {} : { processorId }) },
    },
  };
}

/** First what fits hall and lock, then what misses the wish least. */
function byMerit(a: Build, b: Build): number {
  const faults = (build: Build) => Number(build.roomMm !== null && build.roomMm < 0) + Number(!build.withinStack);
  return faults(a) - faults(b) || a.missMm - b.missMm || a.panels - b.panels || a.key.localeCompare(b.key, 'en');
}

function buildsOf(plan: Plan, panel: Panel): PanelBuilds {
  const base = { panelId: panel.id, panelName: panel.name };
  const { acrossMm, heightMm } = plan.wish.wall;
  if (acrossMm === null) return { ...base, builds: [], refused: 'The wish states no size across.' };
  if (heightMm === null) return { ...base, builds: [], refused: 'The wish states no height.' };
  const courses = coursesOf(plan, panel);
  if (courses.length === 0) return { ...base, builds: [], refused: 'Its lock takes no joint that makes such a ring.' };
  const rows = latticeRows(heightMm, [panel.size.heightMm]).flatMap(({ down, up }) => [down?.count, up?.count]);
  const counts = [...new Set(rows)].filter((count): count is number => count !== undefined);
  const builds = courses.flatMap((course) => counts.map((count) => buildOf(plan, panel, course, count)));
  return { ...base, builds: builds.sort(byMerit), refused: null };
}

/**
 * Which panel, which ring: for every panel of the catalogue the walls that come nearest the wish, best first. Panels whose
 * best build fits come first, cheaper ones before dearer.
 */
export function findBuilds(plan: Plan): readonly PanelBuilds[] {
  const price = ({ builds }: PanelBuilds) => builds[0]?.price ?? Number.MAX_VALUE;
  const misfits = ({ builds }: PanelBuilds) => {
    const best = builds[0];
    return best === undefined ? 2 : Number((best.roomMm !== null && best.roomMm < 0) || !best.withinStack);
  };
  return plan.catalogue.panels
    .map((panel) => buildsOf(plan, panel))
    .sort((a, b) => misfits(a) - misfits(b) || price(a) - price(b));
}
