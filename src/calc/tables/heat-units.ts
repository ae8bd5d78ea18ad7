import table from '../../../shared/heat-units.json';

/** Btu/h in one watt: 3600 s / 1055.05585262 J. */
export const btuhAWatt = table.secondsAnHour / table.joulesABtu;

/** The definitions themselves, for the lines of working. */
export const heatUnits = {
  joulesABtu: table.joulesABtu,
  btuhATon: table.btuhATon,
  secondsAnHour: table.secondsAnHour,
  source: table.clause,
} as const;
