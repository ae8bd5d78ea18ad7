import { ceilDivide } from './bounds/ceil-divide';
import type { RegularWay } from './regular-way';
import type { ZoneToWire } from './zone-to-wire';

/** Ports that regular ways of wiring a zone take at the least, by counting panels: every strand has runs of its own. */
export class LeastPortsOfWay {
  private readonly zone: ZoneToWire;
  /** Cells in the columns before each column and in the rows below each row, at `column * (rows + 1) + row`. */
  private readonly before: Int32Array;

  constructor(zone: ZoneToWire) {
    const { columns, rows } = zone.grid;
    this.zone = zone;
    this.before = new Int32Array((columns + 1) * (rows + 1));
    for (let column = 0; column < columns; column++) {
      let below = 0;
      for (let row = 0; row < rows; row++) {
        if (zone.cellAt[column * rows + row]! >= 0) below++;
        const at = column * (rows + 1) + row + 1;
        this.before[at + rows + 1] = this.before[at]! + below;
      }
    }
  }

  of(way: RegularWay): number {
    const { rows } = this.zone.grid;
    const tooLarge = this.zone.tooLarge.length;
    switch (way.kind) {
      case 'columns':
        return tooLarge + this.inStrips(1, 0, rows);
      case 'folded':
        return tooLarge + this.inStrips(way.wide, 0, rows);
      case 'split':
        return tooLarge + this.inStrips(way.wide, 0, way.aboveRow) + this.inStrips(1, way.aboveRow, rows);
      case 'rows':
        return tooLarge + this.inStrips(this.zone.grid.columns, 0, rows);
    }
  }

  /** Runs of rows `from` .. `to - 1` in strips `wide` columns each; a strip without panels needs none. */
  private inStrips(wide: number, from: number, to: number): number {
    const { grid, panelsAtMost } = this.zone;
    const { columns, rows } = grid;
    let ports = 0;
    let before = 0;
    for (let first = 0; first < columns; first += wide) {
      const end = Math.min(columns, first + wide) * (rows + 1);
      const cells = this.before[end + to]! - this.before[end + from]!;
      if (cells > before) ports += ceilDivide(cells - before, panelsAtMost);
      before = cells;
    }
    return ports;
  }
}
