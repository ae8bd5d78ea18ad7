import table from '../../../shared/air.json';

/** Dry air near 20 degrees Celsius: kg/m3 and J/(kg K). From memory. */
export const air = {
  densityKgPerM3: table.densityKgPerM3,
  heatJPerKgK: table.heatJPerKgK,
  source: `${table.title}, ${table.edition}`,
} as const;
