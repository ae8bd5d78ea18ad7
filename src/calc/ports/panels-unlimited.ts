/** What a run may hold whatever its pixels where no sheet and no user limits it: as many as the places of a run are numbered to. */
export const panelsUnlimited = 65_535;
