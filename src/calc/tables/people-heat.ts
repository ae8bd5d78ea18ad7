import table from '../../../shared/people-heat.json';

/** Watts that one person at light work gives off, sensible and latent together. From memory. */
export const peopleHeat = {
  wattsAPerson: table.wattsAPerson,
  source: `${table.edition}, ${table.clause}`,
} as const;
