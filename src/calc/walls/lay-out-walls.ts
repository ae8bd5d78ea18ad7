import type { Wall } from '../../plan/wall';
import type { PanelShape } from '../panels/panel-views';
import { panelsById } from '../panels/panels-by-id';
import { countByType } from '../surfaces/count-by-type';
import { newTable } from '../surfaces/new-table';
import { fillWallTable } from './fill-wall-table';
import { pathJoints } from './path-joints';
import { shapePath } from './shape-path';
import { type RowStack, stackBands } from './stack-bands';
import { wallFaults } from './wall-fault';
import type { WallResult, WallsResults } from './wall-result';

/** Every wall's geometry and panels. A wall that cannot be laid out gives an empty table; checkWalls says why. */
export function layOutWalls(walls: readonly Wall[], shapes: readonly PanelShape[]): WallsResults {
  const byId = panelsById(shapes);
  const faults = wallFaults(walls, byId);
  return { walls: walls.map((wall, i) => (faults[i] === null ? layOutWall(wall, byId) : emptyWall(wall))) };
}

function layOutWall(wall: Wall, shapes: ReadonlyMap<string, PanelShape>): WallResult {
  const stack = stackBands(wall.bands, shapes);
  const { columnWidthMm, depthMm, unbevelledMm } = stack;
  const jointDeg = pathJoints(wall.path);
  const shape = shapePath({ jointDeg, columnWidthMm, depthMm, unbevelledMm, ...wall.place });
  const table = fillWallTable(wall, stack, shape);
  const counts = countByType(table);
  const total = (each: (type: RowStack['types'][number]) => number) =>
    stack.types.reduce((sum, type, i) => sum + counts[i]! * each(type), 0);
  return {
    wallId: wall.id,
    letter: wall.letter,
    name: wall.name,
    table,
    columns: jointDeg.length,
    rows: stack.type.length,
    columnWidthMm,
    baseMm: wall.baseMm,
    heightMm: stack.heightMm,
    jointDeg,
    columnHeadingDeg: shape.headingDeg,
    frontMm: shape.frontMm,
    backMm: shape.backMm,
    seamMm: shape.seamMm,
    bestFit: shape.bestFit,
    insideDiameterMm: shape.insideDiameterMm,
    openingMm: shape.openingMm,
    turnsDeg: shape.turnsDeg,
    areaM2: total((type) => (type.widthMm * type.heightMm) / 1e6),
    pixels: total((type) => type.pixelsWide * type.pixelsHigh),
    box: shape.box,
  };
}

function emptyWall(wall: Wall): WallResult {
  const { xMm, yMm } = wall.place;
  const none = new Float64Array(0);
  return {
    wallId: wall.id,
    letter: wall.letter,
    name: wall.name,
    table: newTable(wall, 'wall', [], { count: 0, columns: 0, rows: 0 }, { width: 0, height: 0 }),
    columns: 0,
    rows: 0,
    columnWidthMm: 0,
    baseMm: wall.baseMm,
    heightMm: 0,
    jointDeg: none,
    columnHeadingDeg: none,
    frontMm: none,
    backMm: none,
    seamMm: none,
    bestFit: null,
    insideDiameterMm: null,
    openingMm: null,
    turnsDeg: 0,
    areaM2: 0,
    pixels: 0,
    box: { leftMm: xMm, rightMm: xMm, frontMm: yMm, backMm: yMm },
  };
}
