import table from '../../../shared/earth-leakage.json';

/** Standing leakage that one residual-current device stands, as a share of its trip current, and a usual trip current in mA. From memory. */
export const earthLeakage = {
  share: table.share,
  tripMa: table.tripMa,
  source: `${table.edition}, ${table.clause}`,
} as const;
