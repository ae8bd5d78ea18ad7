import { ceilDivide } from './ceil-divide';

/**
 * Least runs that panels of these sizes need whatever their places: ceil(sum / capacity) or better. Source: the bounds of
 * S. P. Fekete and J. Schepers, "New classes of fast lower bounds for bin packing problems", Mathematical Programming 91
 * (2001), by their functions u(k): a share x with (k + 1) x whole weighs x, else floor((k + 1) x) / k.
 */
export function leastBins(sizes: ArrayLike<number>, capacity: number): number {
  const counts = new Map<number, number>();
  for (let i = 0; i < sizes.length; i++) counts.set(sizes[i]!, (counts.get(sizes[i]!) ?? 0) + 1);
  let sum = 0;
  for (const [size, count] of counts) sum += size * count;
  let least = ceilDivide(sum, capacity);
  if (counts.size === 1) {
    const [size] = counts.keys();
    return Math.max(least, ceilDivide(sizes.length, Math.floor(capacity / size!)));
  }
  for (let k = 1; k <= 32; k++) {
    let whole = 0;
    let parts = 0;
    for (const [size, count] of counts) {
      if (((k + 1) * size) % capacity === 0) parts += size * count;
      else whole += Math.floor(((k + 1) * size) / capacity) * count;
    }
    // parts / capacity + whole / k, kept in whole numbers.
    least = Math.max(least, ceilDivide(parts * k + whole * capacity, capacity * k));
  }
  return least;
}
