import { fitsWithin } from './panels-within';

/** How closely the evenest limit is sought, as a share of it: less than one panel of any block. */
const closeEnough = 1e-3;

/** First columns of the blocks that a greedy walk makes under a limit. */
function blocksUnder(currentA: Float64Array, from: number, to: number, limitA: number): number[] {
  const starts: number[] = [];
  let sum = 0;
  for (let column = from; column < to; column++) {
    const next = sum + currentA[column]!;
    if (starts.length > 0 && fitsWithin(next, limitA)) {
      sum = next;
    } else {
      starts.push(column);
      sum = currentA[column]!;
    }
  }
  return starts;
}

/**
 * Splits the columns `from .. to - 1` of one level into the fewest neighbouring blocks of at most `limitA`, as even as that number
 * allows, so that one figure repeats and the odd one stands at the end. Returns the first column of each block.
 */
export function splitColumns(currentA: Float64Array, from: number, to: number, limitA: number): number[] {
  const fewest = blocksUnder(currentA, from, to, limitA);
  if (fewest.length < 2) return fewest;
  const largestA = currentA.subarray(from, to).reduce((a, b) => Math.max(a, b), 0);
  let tooLow = largestA * (1 - closeEnough);
  let enough = limitA;
  while (enough - tooLow > enough * closeEnough) {
    const middle = (tooLow + enough) / 2;
    if (blocksUnder(currentA, from, to, middle).length <= fewest.length) enough = middle;
    else tooLow = middle;
  }
  return blocksUnder(currentA, from, to, enough);
}
