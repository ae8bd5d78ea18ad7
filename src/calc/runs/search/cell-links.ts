/**
 * Links between cells, two a cell at most, that make up chains: each link is kept at both its cells, -1 for none. A walk comes
 * to a cell `from` another one; from an end on it comes from -1.
 */
export class CellLinks {
  readonly a: Int32Array;
  readonly b: Int32Array;

  constructor(size: number) {
    this.a = new Int32Array(size).fill(-1);
    this.b = new Int32Array(size).fill(-1);
  }

  link(one: number, other: number): void {
    if (this.a[one]! < 0) this.a[one] = other;
    else this.b[one] = other;
    if (this.a[other]! < 0) this.a[other] = one;
    else this.b[other] = one;
  }

  cut(one: number, other: number): void {
    if (this.a[one] === other) this.a[one] = -1;
    else this.b[one] = -1;
    if (this.a[other] === one) this.a[other] = -1;
    else this.b[other] = -1;
  }

  /** Where a walk goes on; -1 at the other end. At an end that a walk begins at, one link is -1 and the other one is taken. */
  onward(cell: number, from: number): number {
    return this.a[cell] === from ? this.b[cell]! : this.a[cell]!;
  }

  has(one: number, other: number): boolean {
    return this.a[one] === other || this.b[one] === other;
  }

  isEnd(cell: number): boolean {
    return this.a[cell]! < 0 || this.b[cell]! < 0;
  }
}
