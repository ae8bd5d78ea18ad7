import type { CeilingResult } from '../calc/ceilings/ceiling-result';
import type { Plan } from '../plan/plan';
import { degrees, toRadians } from '../units/angle';
import type { Stroke } from './drawing';
import { acrossMm, type ElevationView } from './elevation-view';
import { LineBuilder } from './line-builder';

/** A height of a ceiling with its name, and where its line begins on the left. */
export interface CeilingLevel {
  readonly text: string;
  readonly heightMm: number;
  readonly fromMm: number;
}

/** Ceilings in a level view: at trim as thick as their panels are deep, and dashed lines at the ends of their travel. */
export function ceilingsInElevation(
  ceilings: readonly CeilingResult[],
  planned: Plan['ceilings'],
  view: ElevationView,
): { readonly strokes: readonly Stroke[]; readonly levels: readonly CeilingLevel[] } {
  const slabs = new LineBuilder();
  const travel = new LineBuilder();
  const levels: CeilingLevel[] = [];
  for (const { ceilingId, letter, table } of ceilings) {
    if (table.count === 0) continue;
    const [fromMm, toMm] = spanOf(table, view);
    const trimMm = table.zMm[0]!;
    const deepMm = Math.max(...table.types.map(({ depthMm }) => depthMm));
    slabs.rectangle(fromMm, -trimMm - deepMm, toMm, -trimMm);
    levels.push({ text: `${letter} trim`, heightMm: trimMm, fromMm });
    const height = planned.find(({ id }) => id === ceilingId)?.height;
    if (height === undefined) continue;
    for (const [text, heightMm] of [
      ['lowest', height.lowestMm],
      ['highest', height.highestMm],
    ] as const) {
      if (Math.abs(heightMm - trimMm) < 0.5) continue;
      travel.segment(fromMm, -heightMm, toMm, -heightMm);
      levels.push({ text: `${letter} ${text}`, heightMm, fromMm });
    }
  }
  const common = { layer: 'ceiling', pen: 'ink', leastScale: 0 } as const;
  return {
    strokes: [
      { ...common, weight: 'heavy', dash: 'solid', lines: slabs.build(true) },
      { ...common, weight: 'medium', dash: 'dashed', lines: travel.build() },
    ],
    levels,
  };
}

/** Least and greatest place across the picture of any corner of its panels. */
function spanOf(table: CeilingResult['table'], view: ElevationView): readonly [number, number] {
  let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < table.count; i++) {
    const heading = toRadians(degrees(table.headingDeg[i]!));
    const { widthMm, heightMm } = table.types[table.type[i]!]!;
    const along = Math.abs(Math.cos(heading) * view.rightX + Math.sin(heading) * view.rightY);
    const upright = Math.abs(-Math.sin(heading) * view.rightX + Math.cos(heading) * view.rightY);
    const half = (along * widthMm + upright * heightMm) / 2;
    const middle = acrossMm(view, { xMm: table.xMm[i]!, yMm: table.yMm[i]! });
    from = Math.min(from, middle - half);
    to = Math.max(to, middle + half);
  }
  return [from, to];
}
