/** What the length class of a home run holds, and what it does not: the plan states no routes. */
export const homeRunNote =
  'Home run: the next stock length from the middle of the zone, along its foot (a ceiling: along the edge where the loom arrives) and up to the first panel, with a tenth of slack and at least a metre. The way to a rack that stands elsewhere comes on top.';
