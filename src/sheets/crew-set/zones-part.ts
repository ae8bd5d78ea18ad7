import { cautions } from '../../calc/cautions';
import type { NodesResults } from '../../calc/nodes/node-result';
import type { Zone } from '../../calc/zones/zone-result';
import { counted } from '../../units/counted';
import { formatQuantity } from '../../units/format-quantity';
import type { Format } from '../format';
import { latticeSpan } from '../lattice-span';
import { paperStyle } from '../paper-style';
import { schedulePorts } from '../schedule-ports';
import type { StageParts } from '../stage-parts';
import { nameWidthPx } from '../surface-labels';
import { takeRows } from '../take-rows';
import type { Block, CrewPart, DrawingSheet } from './crew-part';
import type { CrewSetOptions } from './crew-set-options';
import { surfaceSheets } from './surface-sheets';

type ZoneNodes = Pick<NodesResults, 'nodes' | 'nodeOfZone'>;

/** A sheet or more for each zone, drawn from where its crew stands, with its panels by name and its ports in a table; null without zones. */
export function zonesPart(
  parts: StageParts,
  nodes: ZoneNodes,
  { display, rooms, since }: Pick<CrewSetOptions, 'display' | 'rooms' | 'since'>,
): CrewPart | null {
  const ports = schedulePorts(parts);
  const format: Format = (value, unit) => formatQuantity(value, unit, display);
  const rowsOf = parts.zones.map((): number[] => []);
  parts.runs.runs.forEach((run, row) => {
    rowsOf[run.zone]!.push(row);
  });
  const sheets = parts.zones.flatMap((zone, index): readonly DrawingSheet[] => {
    const surface = parts.surfaces.surfaces.findIndex(({ surfaceId }) => surfaceId === zone.surfaceId);
    const table = parts.surfaces.surfaces[surface];
    if (table === undefined || zone.panels === 0) return [];
    const letter = parts.surfaces.surfaces.length === 1 ? '' : `${zone.letter} `;
    const rows = rowsOf[index]!;
    const under: readonly Block[] = [
      { kind: 'text', style: 'body', text: zoneWords(parts, zone, index, nodes, format) },
      ...(rows.length === 0
        ? []
        : [{ kind: 'table', title: `Ports of processor ${zone.processor}`, schedule: takeRows(ports, rows) } as const]),
    ];
    return surfaceSheets(parts, {
      surface,
      from: table.kind === 'wall' ? 'behind' : 'inside',
      tint: 'port',
      part: {
        firstColumn: zone.firstColumn,
        columns: Math.min(zone.columns, table.columns - zone.firstColumn + 1),
        firstRow: zone.firstRow,
        rows: Math.min(zone.rows, table.rows - zone.firstRow + 1),
      },
      leastPanelMm: Math.max(nameWidthPx(table) / paperStyle.pixelsAMm, tagWidthMm(parts, rows)),
      title: (part) =>
        `Processor ${zone.processor}: ${letter}${latticeSpan('C', part.firstColumn, part.columns)}, ${latticeSpan('R', part.firstRow, part.rows)}`,
      heightShare: 0.6,
      caution: table.kind === 'wall' ? cautions.height : cautions.hangingLoad,
      since,
      under,
      rooms,
      allTags: true,
      format,
    });
  });
  return sheets.length === 0 ? null : { id: 'zones', title: 'Zones', sheets };
}

/** Width of the longest tag of these runs, with the air that texts keep, so that neighbours do not push each other out. */
function tagWidthMm({ runs }: StageParts, rows: readonly number[]): number {
  const signs = rows.map((row) => {
    const { port, returnPort } = runs.runs[row]!;
    return Math.max(port.length, returnPort === null ? 0 : returnPort.length + 'to '.length);
  });
  return (Math.max(0, ...signs) * 0.6 + 0.4) * paperStyle.lettersMm.small;
}

/** What the processor drives, who feeds it, and how high an adult reaches. */
function zoneWords(parts: StageParts, zone: Zone, index: number, nodes: ZoneNodes, format: Format): string {
  const node = nodes.nodes[nodes.nodeOfZone[index] ?? -1];
  const crop = node?.crops.find((one) => one.zone === index);
  const takes = crop === undefined ? '' : `, taken of it: ${crop.width} × ${crop.height} px from ${crop.x}, ${crop.y}`;
  const sentences = [
    `Processor ${zone.processor}: ${counted(zone.panels, 'panel')}, canvas ${zone.canvasWidth} × ${zone.canvasHeight} px`,
    ...(zone.blankColumns > 0 ? [`${counted(zone.blankColumns, 'column')} of it blank`] : []),
    ...(node === undefined ? [] : [`node ${node.name}${takes}`]),
  ];
  const isWall = parts.walls.some(({ wallId }) => wallId === zone.surfaceId);
  return `${sentences.join('; ')}.${isWall ? ` An adult reaches ${format(parts.reachMm, 'mm')}.` : ''}`;
}
