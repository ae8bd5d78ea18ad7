const dayMs = 86_400_000;
const yearFirst = 1970;

const isLeap = (year: number) => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
const daysOfYear = (year: number) => (isLeap(year) ? 366 : 365);
const daysOfMonths = (year: number) => [31, isLeap(year) ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/**
 * A moment as '2026-11-25 14:05', in universal time by the Gregorian calendar (ISO 8601), whatever machine writes it.
 * `atMs`: whole milliseconds since 1970, from 0 on; a moment past the year 9999 gets a longer year.
 */
export function utcText(atMs: number): string {
  const minute = Math.floor((atMs % dayMs) / 60_000);
  let day = Math.floor(atMs / dayMs);
  // 400 years are 146,097 days: far years need no long walk.
  const cycles = Math.floor(day / 146_097);
  day -= cycles * 146_097;
  let year = yearFirst + 400 * cycles;
  for (; day >= daysOfYear(year); year++) day -= daysOfYear(year);
  let month = 0;
  for (const days of daysOfMonths(year)) {
    if (day < days) break;
    day -= days;
    month++;
  }
  const two = (figure: number) => String(figure).padStart(2, '0');
  return `${year}-${two(month + 1)}-${two(day + 1)} ${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
}
