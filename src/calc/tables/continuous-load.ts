import table from '../../../shared/continuous-load.json';

/** Share of a device's rating usable for a load that lasts, and from how many hours on. NEC 210.20(A), 215.3. */
export const continuousLoad = {
  usableShare: table.usableShare,
  lastsHours: table.lastsHours,
  source: `${table.edition}, ${table.clause}`,
} as const;
