/** Edges of every row on the canvas, row 0 lowest; top counts down, so a row's top is less than its bottom. -1: a row without panels. */
export interface RowEdges {
  readonly top: Int32Array;
  readonly bottom: Int32Array;
}

/**
 * Cuts the rows of a surface into so many strips, one above the other: the tallest strip as low as it can be, and then each
 * cut as near to equal numbers of rows as that allows, the lower strip having the row that is over.
 * Gives the first row of every strip and the number of rows at the end; null with fewer rows than strips.
 */
export function splitRows(edges: RowEdges, strips: number): number[] | null {
  const rows = edges.top.length;
  if (strips > rows || strips < 1) return null;
  const height = stripHeights(edges);
  const tallest = leastTallest(height, rows, strips);
  const lowest = lowestStarts(height, rows, strips, tallest);
  const starts = [0];
  for (let strip = 1; strip < strips; strip++) {
    const before = starts[strip - 1]!;
    let reach = before + 1;
    while (reach < rows && height(before, reach + 1) <= tallest) reach++;
    const even = Math.ceil((strip * rows) / strips);
    const least = Math.max(lowest[strip]!, before + 1);
    starts.push(Math.min(Math.max(even, least), reach, rows - (strips - strip)));
  }
  return [...starts, rows];
}

/** Height on the canvas of the rows from..to - 1, empty rows at the edges left out. */
export function stripHeights({ top, bottom }: RowEdges): (from: number, to: number) => number {
  const rows = top.length;
  const firstFull = new Int32Array(rows + 1).fill(rows);
  const lastFull = new Int32Array(rows + 1).fill(-1);
  for (let r = rows - 1; r >= 0; r--) firstFull[r] = top[r]! >= 0 ? r : firstFull[r + 1]!;
  for (let r = 0; r < rows; r++) lastFull[r + 1] = top[r]! >= 0 ? r : lastFull[r]!;
  return (from, to) => {
    const low = firstFull[from]!;
    const high = lastFull[to]!;
    return low > high ? 0 : bottom[low]! - top[high]!;
  };
}

type Height = (from: number, to: number) => number;

/** The least height within which so many strips hold all rows. */
function leastTallest(height: Height, rows: number, strips: number): number {
  let fits = height(0, rows);
  let tooLow = 0;
  for (let row = 0; row < rows; row++) tooLow = Math.max(tooLow, height(row, row + 1) - 1);
  while (fits - tooLow > 1) {
    const tried = tooLow + Math.floor((fits - tooLow) / 2);
    if (stripsWithin(height, rows, tried) <= strips) fits = tried;
    else tooLow = tried;
  }
  return fits;
}

function stripsWithin(height: Height, rows: number, limit: number): number {
  let strips = 1;
  let start = 0;
  for (let row = 1; row < rows; row++) {
    if (height(start, row + 1) <= limit) continue;
    strips++;
    start = row;
  }
  return strips;
}

/** For every strip the lowest row at which it may start so that the strips from it up still hold the rows above. */
function lowestStarts(height: Height, rows: number, strips: number, tallest: number): number[] {
  const lowest: number[] = new Array<number>(strips).fill(0);
  let end = rows;
  for (let strip = strips - 1; strip >= 0; strip--) {
    let start = Math.max(0, end - 1);
    while (start > 0 && height(start - 1, end) <= tallest) start--;
    lowest[strip] = start;
    end = start;
  }
  return lowest;
}
