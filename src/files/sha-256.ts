/** The first 32 bits of the fractional parts of a number, taken from its exact figure. */
const fraction = (value: number) => Math.floor((value - Math.floor(value)) * 2 ** 32);
const firstPrimes = (count: number): readonly number[] => {
  const found: number[] = [];
  for (let n = 2; found.length < count; n++) if (found.every((prime) => n % prime !== 0)) found.push(n);
  return found;
};

/** Constants of FIPS 180-4, 4.2.2 and 5.3.3: from the cube and the square roots of the first primes. */
const rounds = Uint32Array.from(firstPrimes(64), (prime) => fraction(Math.cbrt(prime)));
const start = Uint32Array.from(firstPrimes(8), (prime) => fraction(Math.sqrt(prime)));

/**
 * SHA-256 of bytes (FIPS 180-4) in 64 hexadecimal digits. The browser's own answers later and only on a safe connection;
 * a name for a plan is wanted at once and everywhere.
 */
export function sha256(bytes: Uint8Array): string {
  const state = Uint32Array.from(start);
  const padded = new Uint8Array(Math.ceil((bytes.length + 9) / 64) * 64);
  padded.set(bytes);
  padded[bytes.length] = 0x80;
  const words = new DataView(padded.buffer);
  words.setUint32(padded.length - 8, Math.floor(bytes.length / 2 ** 29));
  words.setUint32(padded.length - 4, (bytes.length << 3) >>> 0);
  const schedule = new Uint32Array(64);
  for (let at = 0; at < padded.length; at += 64) mixBlock(state, schedule, words, at);
  return [...state].map((word) => word.toString(16).padStart(8, '0')).join('');
}

const turn = (word: number, by: number) => (word >>> by) | (word << (32 - by));

function mixBlock(state: Uint32Array, w: Uint32Array, words: DataView, at: number): void {
  for (let i = 0; i < 16; i++) w[i] = words.getUint32(at + 4 * i);
  for (let i = 16; i < 64; i++) {
    const [near, far] = [w[i - 2]!, w[i - 15]!];
    const small1 = turn(near, 17) ^ turn(near, 19) ^ (near >>> 10);
    const small0 = turn(far, 7) ^ turn(far, 18) ^ (far >>> 3);
    w[i] = small1 + w[i - 7]! + small0 + w[i - 16]!;
  }
  let [a, b, c, d, e, f, g, h] = state as unknown as [number, number, number, number, number, number, number, number];
  for (let i = 0; i < 64; i++) {
    const large1 = turn(e, 6) ^ turn(e, 11) ^ turn(e, 25);
    const first = (h + large1 + ((e & f) ^ (~e & g)) + rounds[i]! + w[i]!) | 0;
    const large0 = turn(a, 2) ^ turn(a, 13) ^ turn(a, 22);
    const second = (large0 + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    [h, g, f, e, d, c, b, a] = [g, f, e, (d + first) | 0, c, b, a, (first + second) | 0];
  }
  for (const [i, value] of [a, b, c, d, e, f, g, h].entries()) state[i] = state[i]! + value;
}
