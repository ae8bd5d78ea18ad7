/**
 * Which of `places` are chosen when `chosen` of them are spread as evenly as they go (1: chosen). The choice reads the
 * same from both ends wherever that is possible: it is not where an odd number is chosen of an even number of places,
 * and then only the middle one stands off centre. Counted in integers. `chosen` beyond `places` chooses all.
 */
export function spreadEvenly(places: number, chosen: number): Uint8Array {
  const picked = new Uint8Array(places);
  const many = Math.min(chosen, places);
  for (let k = 1; 2 * k <= many; k++) {
    // The k-th of `many` equal stretches has its middle at (2k - 1) places / (2 many).
    const twice = (2 * k - 1) * places;
    const place = (twice - (twice % (2 * many))) / (2 * many);
    picked[place] = 1;
    picked[places - 1 - place] = 1;
  }
  if (many % 2 === 1) picked[places >> 1] = 1;
  return picked;
}
