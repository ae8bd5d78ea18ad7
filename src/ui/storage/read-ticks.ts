import type { LinkedTicks } from '../../files/tick-link';

/** Reads the ticks that the signs of a link carry; what unpacks them is fetched when a first such link is opened. */
export async function readTicks(signs: string): Promise<LinkedTicks> {
  const { decodeTicks } = await import('../../files/tick-link');
  return decodeTicks(signs);
}
