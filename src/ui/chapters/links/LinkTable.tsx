import { linkById } from '../../../calc/links/link-by-id';
import type { LinkFit, SurfaceLinks } from '../../../calc/links/link-result';
import { type FigureColumn, FigureTable } from '../../widgets/FigureTable';
import { type Format, useFormat } from '../../widgets/use-format';
import { whyNotWords } from './why-not-words';

/** What is said of a link beside its figures: that it is the least, what raster it sends instead, or why it does not do. */
function remark({ linkId, whyNot, raster, canvas }: LinkFit, leastId: string | null): string {
  if (whyNot !== null) return whyNotWords(whyNot);
  const isOwn = raster === null || (raster.width === canvas.width && raster.height === canvas.height);
  const sent = isOwn ? [] : [`sends ${raster.width} × ${raster.height}`];
  return [...(linkId === leastId ? ['the least'] : []), ...sent].join(', ');
}

/** '10.6 of 14.4 Gbit/s': the unit once where both have the same; what it carries alone where nothing is known of the need. */
function needOf({ needBps, isAtMost, carriesBps }: LinkFit, format: Format): string {
  const carries = format(carriesBps, 'bps');
  if (needBps === null) return carries;
  const unit = /\s\S+$/.exec(carries)?.[0] ?? '';
  const need = format(needBps, 'bps');
  return `${isAtMost ? '≤ ' : ''}${need.endsWith(unit) ? need.slice(0, -unit.length) : need} of ${carries}`;
}

const columns = (format: Format, leastId: string | null): readonly FigureColumn<LinkFit>[] => [
  {
    key: 'link',
    title: 'Link',
    cell: (fit) => (
      <>
        {linkById(fit.linkId)!.name} <span className="quiet">{remark(fit, leastId)}</span>
      </>
    ),
  },
  { key: 'left', title: 'Left', cell: ({ fits, marginShare }) => (fits ? format(marginShare, 'share', '–') : '–') },
  { key: 'need', title: 'Needs, of what it carries', cell: (fit) => needOf(fit, format) },
];

/** Every link of the table against what one surface is sent. */
export function LinkTable({ links }: { readonly links: SurfaceLinks }) {
  const format = useFormat();
  return (
    <FigureTable
      caption={`Links for ${links.letter}`}
      captioned
      columns={columns(format, links.leastId)}
      rows={links.fits}
      keyOf={({ linkId }) => linkId}
      isChosen={({ linkId }) => linkId === links.chosen?.linkId}
    />
  );
}
