import { counted } from '../units/counted';
import { latticeSpan } from './lattice-span';
import { panelOfZone } from './panel-of-zone';
import type { Schedule } from './schedule';
import { figures, words } from './schedule-column';
import type { StageParts } from './stage-parts';

/** Zones: a row for each processor with the rectangle that it drives. */
export function scheduleZones({ surfaces, zones }: Pick<StageParts, 'surfaces' | 'zones'>): Schedule {
  return {
    id: 'zones',
    title: 'Zones by processor',
    columns: [
      figures('processor', 'Processor', 'count'),
      words('surface', 'Surface'),
      words('columns', 'Columns'),
      words('rows', 'Rows'),
      figures('panels', 'Panels', 'count'),
      figures('canvasWidth', 'Canvas width', 'px'),
      figures('canvasHeight', 'Canvas height', 'px'),
      figures('blankColumns', 'Blank columns', 'count'),
      figures('breakouts', 'Breakouts', 'count'),
      figures('ports', 'Ports', 'count'),
    ],
    count: zones.length,
    row: (index) => {
      const zone = zones[index]!;
      return [
        zone.processor,
        zone.letter,
        latticeSpan('C', zone.firstColumn, zone.columns),
        latticeSpan('R', zone.firstRow, zone.rows),
        zone.panels,
        zone.canvasWidth,
        zone.canvasHeight,
        zone.blankColumns,
        zone.breakouts,
        zone.ports,
      ];
    },
    panelOf: (index) => panelOfZone(surfaces, zones[index]!),
    totals: [
      null,
      counted(zones.length, 'zone'),
      null,
      null,
      zones.reduce((total, zone) => total + zone.panels, 0),
      null,
      null,
      zones.reduce((total, zone) => total + zone.blankColumns, 0),
      zones.reduce((total, zone) => total + zone.breakouts, 0),
      zones.reduce((total, zone) => total + zone.ports, 0),
    ],
  };
}
