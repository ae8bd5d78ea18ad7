/**
 * A generator of 32 random bits with a state of its own: the same seed gives the same search on every machine.
 * Source: G. Marsaglia, "Xorshift RNGs", Journal of Statistical Software 8 (14), 2003; shifts 13, 17, 5.
 */
export function createRandomBits(seed: number): () => number {
  let state = seed >>> 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return state >>> 0;
  };
}
