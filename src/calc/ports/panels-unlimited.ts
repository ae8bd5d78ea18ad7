/** What a run may hold whatever its pixels where no sheet and no user limits it. */
export const panelsUnlimited = 1_000_000;
