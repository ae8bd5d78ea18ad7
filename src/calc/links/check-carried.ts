import type { Check } from '../chapter';
import type { SurfaceTable } from '../surfaces/surface-table';
import { surfaceWords } from '../surfaces/surface-words';
import { videoLinks } from '../tables/video-links';
import type { LinksInputs } from './compute-links';
import { linkById } from './link-by-id';
import type { LinkFit, LinksResults, SurfaceLinks, WhyNot } from './link-result';
import { mendLink } from './mend-link';

const reasons: Readonly<Record<WhyNot, string>> = {
  timing: 'there is no timing of the kind chosen',
  depth: 'it does not send this depth',
  clock: 'the pixel clock is too high for it: {measured} of the {limit} that it carries',
  payload: 'it needs {measured}, the link carries {limit}',
  unproven: 'it needs {measured} at most, the link carries {limit}',
  raster: 'none of its fixed rasters holds the canvas',
  rate: 'the fixed rasters that hold the canvas do not run at this rate',
  packets: 'its packets take {measured} of the wire, the line rate is {limit}',
};

/**
 * Whether the link of a surface, stated or the least, carries its canvases at every served mode. Nothing of a link that is not in
 * the table, unless no other carries it either.
 */
export function checkCarried(
  inputs: LinksInputs,
  results: LinksResults,
  table: SurfaceTable,
  links: SurfaceLinks,
): Check[] {
  const { chosen, leastId, surfaceId } = links;
  if (chosen === null && leastId !== null) return [];
  const fix = chosen?.fits === true ? null : mendLink(inputs, results, surfaceId);
  const common = {
    id: `links.carried.${table.letter}`,
    chapter: 'links' as const,
    unit: 'bps' as const,
    where: [{ kind: 'surface' as const, name: table.letter }],
    ...(fix === null ? {} : { fix }),
  };
  if (chosen !== null) return [{ ...common, ...judged(table, chosen) }];
  const words = surfaceWords(table);
  const carriesMost = Math.max(...videoLinks.map(({ payloadBps }) => payloadBps));
  return [
    {
      ...common,
      severity: 'stop',
      measured: links.payloadBps ?? links.activeBps,
      limit: carriesMost,
      sentence: `No link of the table carries the canvas of ${words}, which needs {measured}: send it in smaller parts.`,
    },
  ];
}

function judged(table: SurfaceTable, fit: LinkFit): Pick<Check, 'severity' | 'measured' | 'limit' | 'sentence'> {
  const words = surfaceWords(table);
  const { name } = linkById(fit.linkId)!;
  const figures = { measured: fit.needBps, limit: fit.carriesBps };
  if (fit.whyNot === null) {
    return {
      ...figures,
      severity: 'pass',
      sentence: `${name} carries the canvas of ${words}: ${fit.isAtMost ? 'at most ' : ''}{measured} of {limit}.`,
    };
  }
  return {
    ...figures,
    severity: fit.whyNot === 'unproven' ? 'watch' : 'stop',
    sentence:
      fit.whyNot === 'unproven'
        ? `Whether ${name} carries the canvas of ${words} is not proved: ${reasons.unproven}.`
        : `${name} does not carry the canvas of ${words}: ${reasons[fit.whyNot]}.`,
  };
}
