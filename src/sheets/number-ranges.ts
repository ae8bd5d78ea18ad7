/** Rising numbers with neighbours as a range: '1-3, 5'. */
export function numberRanges(numbers: readonly number[]): string {
  const parts: [number, number][] = [];
  for (const number of numbers) {
    const last = parts.at(-1);
    if (last !== undefined && last[1] === number - 1) last[1] = number;
    else parts.push([number, number]);
  }
  return parts.map(([from, to]) => (from === to ? `${from}` : `${from}-${to}`)).join(', ');
}
