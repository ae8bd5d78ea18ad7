import type { Check } from '../chapter';
import type { PanelShape } from '../panels/panel-views';
import { setFieldsFix } from '../set-fields-fix';
import { type ClippedLattice, clipCeiling } from './clip-ceiling';
import { holeWindow } from './hole-window';
import { ceilingField, type JudgedCeiling, surfacePlace } from './judged-ceiling';
import { latticeOf } from './lattice';
import type { LatticeWindow } from './lattice-window';

/** Holes of a ceiling that take no panel away, because they lie beyond its outline or beside its panels. */
export function checkCeilingHoles(judged: JudgedCeiling, shapes: ReadonlyMap<string, PanelShape>): Check[] {
  const { ceiling, index, result } = judged;
  const type = result.table.types[0];
  if (ceiling.holes.length === 0 || type === undefined || !shapes.has(ceiling.panelId)) return [];
  const lattice = latticeOf(ceiling.place, type);
  const whole = clipCeiling({ ...ceiling, holes: [] }, lattice);
  const idle = ceiling.holes.flatMap((hole, h) =>
    whole !== null && takesAny(whole, holeWindow(hole, lattice)) ? [] : [h],
  );
  if (idle.length === 0) return [];
  return [
    {
      id: `ceilings.hole-outside.${ceiling.letter}`,
      chapter: 'ceilings',
      severity: 'watch',
      measured: idle.length,
      limit: 0,
      unit: 'count',
      where: [surfacePlace(ceiling), ...idle.map((h) => ceilingField(index, 'holes', h))].slice(0, 50),
      sentence: `Holes of ceiling ${ceiling.letter} that take no panel away, since none lies over them: {measured}.`,
      fix: setFieldsFix('Drop them', `holes of ceiling ${ceiling.letter}`, [
        { path: ['ceilings', index, 'holes'], value: ceiling.holes.filter((_, h) => !idle.includes(h)) },
      ]),
    },
  ];
}

function takesAny({ firstI, firstJ, columns, rows, kept }: ClippedLattice, over: LatticeWindow): boolean {
  const toI = Math.min(columns, over.firstI + over.columns - firstI);
  const toJ = Math.min(rows, over.firstJ + over.rows - firstJ);
  for (let i = Math.max(0, over.firstI - firstI); i < toI; i++) {
    for (let j = Math.max(0, over.firstJ - firstJ); j < toJ; j++) if (kept[i * rows + j] === 1) return true;
  }
  return false;
}
