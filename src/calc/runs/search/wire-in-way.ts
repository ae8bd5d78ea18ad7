import type { WayOfWiring } from '../../../plan/hand-change';
import { type Block, foldStrands, stripsOf } from './fold-strands';
import { lineUp } from './line-up-runs';
import { measureWiring } from './measure-wiring';
import { StrandCutter } from './strand-cutter';
import type { ZoneToWire } from './zone-to-wire';
import type { ZoneWiring } from './zone-wiring';

export type RegularWay = Exclude<WayOfWiring, { kind: 'free' }>;

/**
 * A zone wired in one regular way: begun from the left and from the right, strands too long for a port cut in both styles,
 * rows folded one by one up to all together; each wiring that measures differently comes once. A hole or an odd edge cuts a
 * strand, so a run may come out short there and an entry out of reach.
 */
export function wireInWay(zone: ZoneToWire, way: RegularWay, cutter = new StrandCutter(zone.region)): ZoneWiring[] {
  const wirings: ZoneWiring[] = [];
  for (const fromRight of zone.symmetric ? [false] : [false, true]) {
    for (const strands of strandsOf(zone, way, fromRight)) {
      const cuts = strands.map((strand) => cutter.cut(strand));
      for (const style of ['full', 'even'] as const) {
        const runs = lineUp(
          zone,
          strands,
          cuts.map((cut) => cut[style]),
        );
        const wiring = measureWiring(zone.grid, zone.limits, way, runs, zone.tooLarge);
        if (!wirings.some((each) => measuresAlike(each, wiring))) wirings.push(wiring);
        if (cuts.every((cut) => cut.even === cut.full)) break;
      }
    }
  }
  return wirings;
}

function strandsOf(zone: ZoneToWire, way: RegularWay, fromRight: boolean): number[][][] {
  const { grid, cellAt } = zone;
  const whole: Block = { columnFirst: 0, columnLast: grid.columns - 1, rowFirst: 0, rowLast: grid.rows - 1 };
  const fold = (block: Block, wide: number, along: 'columns' | 'rows') =>
    stripsOf(block, wide, along, fromRight).flatMap((strip) => foldStrands(grid, cellAt, strip, along, fromRight));
  switch (way.kind) {
    case 'columns':
      return [fold(whole, 1, 'columns')];
    case 'folded':
      return [fold(whole, way.wide, 'columns')];
    case 'split': {
      const above = { ...whole, rowFirst: Math.min(way.aboveRow, grid.rows) };
      const below = { ...whole, rowLast: Math.min(way.aboveRow, grid.rows) - 1 };
      return [[...fold(above, 1, 'columns'), ...fold(below, way.wide, 'columns')]];
    }
    case 'rows': {
      const mostRows = Math.max(1, Math.floor(zone.panelsAtMost / Math.max(1, grid.columns)));
      const together = new Set([1, Math.min(mostRows, grid.rows), grid.rows]);
      return [...together].map((wide) => fold(whole, wide, 'rows'));
    }
  }
}

function measuresAlike(one: ZoneWiring, other: ZoneWiring): boolean {
  return (
    one.ports === other.ports &&
    one.entriesOutOfReach === other.entriesOutOfReach &&
    one.fullestPixels === other.fullestPixels &&
    one.figures === other.figures &&
    one.cableMm === other.cableMm
  );
}
