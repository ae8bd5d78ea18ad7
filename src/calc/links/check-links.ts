import type { Check } from '../chapter';
import type { SurfaceTable } from '../surfaces/surface-table';
import { surfaceWords } from '../surfaces/surface-words';
import { displayPortFigures } from '../tables/video-links';
import { checkCarried } from './check-carried';
import { checkInput } from './check-input';
import { checkKnown } from './check-known';
import { checkTiming } from './check-timing';
import type { LinksInputs } from './compute-links';
import { linkById } from './link-by-id';
import type { LinksResults, SurfaceLinks } from './link-result';

/** Whether what every surface is sent has a timing, comes out at its rate, and is carried by its link and by the inputs behind it. */
export function checkLinks(inputs: LinksInputs, results: LinksResults): Check[] {
  const judged = results.surfaces.flatMap((links) => {
    const table = inputs.surfaces.surfaces.find(({ surfaceId }) => surfaceId === links.surfaceId);
    if (table === undefined || links.canvas === null) return [];
    return [
      ...checkTiming(inputs, results, table, links),
      ...checkCarried(inputs, results, table, links),
      ...checkMargin(table, links),
      ...checkInput(inputs, table, links),
    ];
  });
  return [...checkKnown(inputs), ...judged];
}

/** A DisplayPort link so full that its own clock may be too slow for it. */
function checkMargin(table: SurfaceTable, { chosen }: SurfaceLinks): Check[] {
  if (chosen === null || !chosen.fits || linkById(chosen.linkId)!.kind !== 'displayport') return [];
  const { clockLossShare } = displayPortFigures;
  const margin = chosen.marginShare!;
  return margin >= clockLossShare
    ? []
    : [
        {
          id: `links.margin.${table.letter}`,
          chapter: 'links',
          severity: 'watch',
          measured: margin,
          limit: clockLossShare,
          unit: 'share',
          where: [{ kind: 'surface', name: table.letter }],
          sentence: `The link of ${surfaceWords(table)} has {measured} left, and its clock may be {limit} slow: take the next faster one.`,
        },
      ];
}
