import type { WallHole } from '../../plan/wall';
import type { Check } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import { type JudgedWall, surfacePlace, wallField } from './judged-wall';
import { placeHoles } from './wall-holes';

/** Holes lie on the wall, and what a hole leaves without support is pointed at. */
export function checkHoles(judged: JudgedWall): Check[] {
  return [...checkOutside(judged), ...checkUnsupported(judged)];
}

function checkOutside(judged: JudgedWall): Check[] {
  const { wall, index } = judged;
  const placed = placeHoles(wall);
  const outside = placed.filter((hole) => hole.outside);
  if (outside.length === 0) return [];
  const kept = placed.flatMap((hole): WallHole[] => {
    if (hole.toColumn === hole.fromColumn) return [];
    const size = { columns: hole.toColumn - hole.fromColumn, rows: hole.toRow - hole.fromRow };
    return [{ ...wall.holes[hole.index]!, ...size }];
  });
  return [
    {
      id: `walls.hole-outside.${wall.letter}`,
      chapter: 'walls',
      severity: 'watch',
      measured: outside.length,
      limit: 0,
      unit: 'count',
      where: [surfacePlace(judged), ...outside.map((hole) => wallField(judged, 'holes', hole.index))].slice(0, 50),
      sentence: `Holes of wall ${wall.letter} that lie beyond its columns or rows, in part or altogether: {measured}.`,
      fix: setFieldsFix('Cut them to the wall', `holes of wall ${wall.letter}`, [
        { path: ['walls', index, 'holes'], value: kept },
      ]),
    },
  ];
}

/** Panels over a hole of a standing wall rest on nothing below; panels under one of a hanging wall hang from nothing above. */
function checkUnsupported(judged: JudgedWall): Check[] {
  const { wall, result } = judged;
  const stands = wall.support === 'stands';
  const cut = placeHoles(wall).filter(
    (hole) => hole.toColumn > hole.fromColumn && (stands ? hole.toRow < result.rows : hole.fromRow > 0),
  );
  if (cut.length === 0) return [];
  return [
    {
      id: `walls.hole-support.${wall.letter}`,
      chapter: 'walls',
      severity: 'watch',
      measured: cut.length,
      limit: 0,
      unit: 'count',
      where: [surfacePlace(judged), ...cut.map((hole) => wallField(judged, 'holes', hole.index))].slice(0, 50),
      sentence: stands
        ? `Holes of wall ${wall.letter} with panels over them and nothing below: {measured}. Have a structural engineer say what carries those panels.`
        : `Holes of wall ${wall.letter} with panels under them and nothing above: {measured}. Have a qualified rigger say what carries those panels.`,
    },
  ];
}
