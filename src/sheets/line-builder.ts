import type { Lines } from './drawing';

/** Whole micrometres, so that the last bit of a sine never shows in a file; never minus zero. */
const whole = (mm: number) => Math.round(mm * 1000) / 1000 + 0;

/** Collects polylines; a point in line with the two before it is merged away. */
export class LineBuilder {
  readonly #xy: number[] = [];
  readonly #ends: number[] = [];
  #first = 0;

  /** Begins the next polyline. */
  moveTo(x: number, y: number): this {
    this.#finish();
    this.#xy.push(whole(x), whole(y));
    return this;
  }

  lineTo(xMm: number, yMm: number): this {
    const xy = this.#xy;
    const x = whole(xMm);
    const y = whole(yMm);
    const n = xy.length;
    if (n - this.#first >= 4) {
      const bx = xy[n - 2]!;
      const by = xy[n - 1]!;
      const ux = bx - xy[n - 4]!;
      const uy = by - xy[n - 3]!;
      const straight = ux * (y - by) === uy * (x - bx) && ux * (x - bx) + uy * (y - by) >= 0;
      if (straight) {
        xy[n - 2] = x;
        xy[n - 1] = y;
        return this;
      }
    }
    xy.push(x, y);
    return this;
  }

  segment(x1: number, y1: number, x2: number, y2: number): this {
    return this.moveTo(x1, y1).lineTo(x2, y2);
  }

  rectangle(left: number, top: number, right: number, bottom: number): this {
    return this.moveTo(left, top).lineTo(right, top).lineTo(right, bottom).lineTo(left, bottom);
  }

  get isEmpty(): boolean {
    return this.#xy.length === 0;
  }

  build(closed = false): Lines {
    this.#finish();
    return { xyMm: Float64Array.from(this.#xy), ends: Uint32Array.from(this.#ends), closed };
  }

  #finish(): void {
    if (this.#xy.length > this.#first) this.#ends.push(this.#xy.length / 2);
    this.#first = this.#xy.length;
  }
}
