import type { Place } from '../calc/chapter';

/** Places named before the rest are counted. */
const placesNamed = 6;

/** The places of a check by name, the first of them with the number of the rest; fields of the file only where nothing else is named. */
export function namePlaces(where: readonly Place[]): string {
  const things = where.filter((place) => place.kind !== 'field');
  const names = (things.length > 0 ? things : where).map((place) => place.name);
  const more = names.length > placesNamed ? [`and ${names.length - placesNamed} more`] : [];
  return [...names.slice(0, placesNamed), ...more].join(', ');
}
