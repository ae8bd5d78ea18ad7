import type { Check } from '../chapter';
import { type JudgedWall, surfacePlace, wallField } from './judged-wall';

/** Bands of unlike pixels across: the picture changes pitch where they meet, and the canvas has columns that show nothing. */
export function checkPitches(judged: JudgedWall): Check[] {
  const { wall, result } = judged;
  const wide = result.table.types.map((type) => type.pixelsWide);
  if (new Set(wide).size < 2) return [];
  return [
    {
      id: `walls.pitches.${wall.letter}`,
      chapter: 'walls',
      severity: 'watch',
      measured: Math.min(...wide),
      limit: Math.max(...wide),
      unit: 'px',
      where: [surfacePlace(judged), wallField(judged, 'bands')],
      sentence: `Bands of wall ${wall.letter} have unlike pixels across a column, {measured} and {limit}: the picture changes pitch where they meet.`,
    },
  ];
}
