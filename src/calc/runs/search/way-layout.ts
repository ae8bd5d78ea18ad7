import { type Fold, foldStrands } from './fold-strands';
import { lineUp } from './line-up-runs';
import type { RegularWay } from './regular-way';
import type { RunCuts } from './run-cuts';
import type { RunList } from './run-list';
import { StrandCutter } from './strand-cutter';
import type { StrandList } from './strand-list';
import type { ZoneToWire } from './zone-to-wire';

/** One of the wirings that a regular way allows: begun from the right or from the left, so many rows folded together, cut full or even. */
export interface Variant {
  readonly fromRight: boolean;
  /** Matters to rows only. */
  readonly rowsTogether: number;
  readonly style: CutStyle;
}

/** See `StrandCutter`. */
export type CutStyle = 'full' | 'even';

/** Rows `from` .. `end - 1`, folded in strips `wide` columns each. */
export interface Band {
  readonly from: number;
  readonly end: number;
  readonly wide: number;
}

/** Lays a zone's panels out in regular ways, in working space that it keeps from way to way: what it gives holds until the next. */
export class WayLayout {
  private readonly zone: ZoneToWire;
  private readonly strands: StrandList;
  private readonly cutter: StrandCutter;
  private readonly cuts: { readonly full: RunCuts; readonly even: RunCuts };
  private readonly runs: RunList;

  constructor(zone: ZoneToWire) {
    const { size } = zone.region;
    const cuts = (): RunCuts => ({
      start: new Int32Array(size + 1),
      pixels: new Float64Array(size),
      count: 0,
    });
    const panels = size + zone.tooLarge.length;
    this.zone = zone;
    this.strands = { cells: new Int32Array(size), start: new Int32Array(size + 1), count: 0 };
    this.cutter = new StrandCutter(zone.region);
    this.cuts = { full: cuts(), even: cuts() };
    this.runs = {
      order: new Int32Array(panels),
      start: new Int32Array(panels + 1),
      pixels: new Float64Array(panels),
      ports: 0,
    };
  }

  /** Lays out and cuts in both styles; true where they differ. */
  layOut(way: RegularWay, { fromRight, rowsTogether }: Omit<Variant, 'style'>): boolean {
    const { rows } = this.zone.grid;
    switch (way.kind) {
      case 'columns':
        return this.layOutBands([{ from: 0, end: rows, wide: 1 }], fromRight);
      case 'folded':
        return this.layOutBands([{ from: 0, end: rows, wide: way.wide }], fromRight);
      case 'split': {
        const from = Math.min(way.aboveRow, rows);
        const below = { from: 0, end: from, wide: way.wide };
        return this.layOutBands([{ from, end: rows, wide: 1 }, below], fromRight);
      }
      case 'rows':
        this.strands.count = 0;
        this.fold({ from: 0, end: rows, wide: rowsTogether }, { along: 'rows', fromRight });
        return this.cut();
    }
  }

  /** The same for bands one above the other, which must not overlap. */
  layOutBands(bands: readonly Band[], fromRight: boolean): boolean {
    this.strands.count = 0;
    for (const band of bands) this.fold(band, { along: 'columns', fromRight });
    return this.cut();
  }

  /** The runs of what is laid out. */
  runsOf(style: CutStyle): Readonly<RunList> {
    lineUp(this.zone, this.strands.cells, this.cuts[style], this.runs);
    return this.runs;
  }

  /** How many these are, and ends above reach that they leave; without those of panels that are too large. */
  countOf(style: CutStyle): { readonly runs: number; readonly high: number } {
    const cuts = this.cuts[style];
    return { runs: cuts.count, high: this.cutter.highOf(this.strands, cuts) };
  }

  private fold({ from, end, wide }: Band, fold: Fold): void {
    const block = { columnFirst: 0, columnLast: this.zone.grid.columns - 1, rowFirst: from, rowLast: end - 1 };
    foldStrands(this.zone, block, wide, fold, this.strands);
  }

  private cut(): boolean {
    return this.cutter.cutAll(this.strands, this.cuts.full, this.cuts.even);
  }
}
