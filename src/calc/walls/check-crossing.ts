import type { Check } from '../chapter';
import { columnFootprints } from './column-footprints';
import { crossingColumns } from './crossing-columns';
import { columnPlace, type JudgedWall, surfacePlace } from './judged-wall';

const MOST_PLACES = 49;

/** The path of a wall does not run into itself: no column stands in another that is not its neighbour. */
export function checkCrossing(judged: JudgedWall): Check[] {
  const { wall, result, shapes } = judged;
  const sizes = wall.bands.map((band) => shapes.get(band.panelId)!.size);
  const depthMm = Math.max(...sizes.map((size) => size.depthMm));
  const unbevelledMm = Math.max(0, ...sizes.map((size) => (size.bevelled ? 0 : size.depthMm)));
  const footprints = columnFootprints(result.frontMm, result.jointDeg, depthMm, unbevelledMm);
  const { crossings, complete } = crossingColumns(footprints, MOST_PLACES);
  const about = { id: `walls.crossing.${wall.letter}`, chapter: 'walls', limit: 0, unit: 'count' } as const;
  if (crossings.length === 0 && !complete) {
    return [
      {
        ...about,
        severity: 'watch',
        measured: null,
        where: [surfacePlace(judged)],
        sentence: `Whether the path of wall ${wall.letter} crosses itself was not looked through: its columns are far deeper than wide.`,
      },
    ];
  }
  if (crossings.length === 0) {
    return [
      {
        ...about,
        severity: 'pass',
        measured: 0,
        where: [surfacePlace(judged)],
        sentence: `The path of wall ${wall.letter} does not cross itself.`,
      },
    ];
  }
  return [
    {
      ...about,
      severity: 'stop',
      measured: crossings.length,
      where: [surfacePlace(judged), ...crossings.map(({ column }) => columnPlace(judged, column))],
      sentence:
        crossings.length < MOST_PLACES
          ? `The path of wall ${wall.letter} crosses itself. Columns that stand where others stand already: {measured}.`
          : `The path of wall ${wall.letter} crosses itself. Columns that stand where others stand already: {measured} and more.`,
    },
  ];
}
