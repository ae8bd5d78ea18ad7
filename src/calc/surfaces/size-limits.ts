/** Most panels on all surfaces of one plan together. */
export const MOST_PANELS = 250_000;

/** Most columns or rows of one surface: what the tables' 16-bit numbers hold. */
export const MOST_LINES = 65_535;

/** Most places of one ceiling's lattice, with and without panels, that are looked at. */
export const MOST_PLACES = 1_000_000;
