import { counted } from '../../units/counted';

/** What came in, in a sentence: '12 ticks came in, 8 of them new.' */
export function wordsOfTicksIn(count: number, news: number): string {
  if (count === 0) return 'There are no ticks in it.';
  const came = `${counted(count, 'tick')} came in`;
  if (news === 0) return `${came}; ${count === 1 ? 'it was' : 'all of them were'} here already.`;
  return news === count ? `${came}, all of them new.` : `${came}, ${news} of them new.`;
}
