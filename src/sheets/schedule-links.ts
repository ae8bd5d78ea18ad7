import type { SendingNode } from '../calc/links/compute-links';
import { linkById } from '../calc/links/link-by-id';
import type { LinksResults } from '../calc/links/link-result';
import { counted } from '../units/counted';
import type { Schedule } from './schedule';
import { figures, words } from './schedule-column';

export interface LinkedParts {
  readonly nodes: readonly SendingNode[];
  readonly links: LinksResults['surfaces'];
}

/** Video links: a row for each output of a node with the processor it leads to. What is sent is the same on every row of a surface. */
export function scheduleLinks({ nodes, links }: LinkedParts): Schedule {
  const rows = nodes.flatMap((node) => {
    const surface = links.find(({ surfaceId }) => surfaceId === node.surfaceId);
    return surface === undefined ? [] : node.crops.map((crop, i) => ({ node, crop, output: i + 1, surface }));
  });
  return {
    id: 'links',
    title: 'Video links by output',
    columns: [
      words('node', 'Node'),
      figures('output', 'Output', 'count'),
      figures('processor', 'Processor', 'count'),
      words('surface', 'Surface'),
      words('raster', 'Raster, px'),
      figures('clock', 'Pixel clock', 'Hz'),
      figures('payload', 'Payload', 'bps'),
      words('link', 'Link'),
      figures('cables', 'Cables', 'count'),
      figures('left', 'Left', 'share'),
    ],
    count: rows.length,
    row: (index) => {
      const { node, crop, output, surface } = rows[index]!;
      const { timing, payloadBps, chosen } = surface;
      const link = chosen === null ? undefined : linkById(chosen.linkId);
      const raster = chosen?.raster ?? timing;
      return [
        node.name,
        output,
        crop.processor,
        node.letter,
        raster === null ? null : `${raster.width} × ${raster.height}`,
        timing?.pixelClockHz ?? null,
        payloadBps,
        link?.name ?? null,
        link?.cables ?? null,
        chosen?.fits === true ? chosen.marginShare : null,
      ];
    },
    panelOf: () => null,
    totals: [
      counted(rows.length, 'output'),
      null,
      null,
      null,
      null,
      null,
      null,
      null,
      links.reduce((sum, { cables }) => sum + cables, 0),
      null,
    ],
  };
}
