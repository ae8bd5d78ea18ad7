import table from '../../../shared/standard-gravity.json';

/** Newtons that one kilogram weighs. CGPM 1901. */
export const standardGravity = { metresPerSecond2: table.metresPerSecond2, source: table.edition } as const;
