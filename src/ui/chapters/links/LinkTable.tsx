import { linkById } from '../../../calc/links/link-by-id';
import type { LinkFit, SurfaceLinks } from '../../../calc/links/link-result';
import { type FigureColumn, FigureTable } from '../../widgets/FigureTable';
import { type Format, useFormat } from '../../widgets/use-format';
import { whyNotWords } from './why-not-words';

const columns = (format: Format, leastId: string | null): readonly FigureColumn<LinkFit>[] => [
  { key: 'link', title: 'Link', cell: ({ linkId }) => linkById(linkId)!.name },
  {
    key: 'fits',
    title: 'Carries it',
    words: true,
    cell: ({ linkId, whyNot }) =>
      whyNot === null ? (linkId === leastId ? 'yes, the least' : 'yes') : `no: ${whyNotWords(whyNot)}`,
  },
  { key: 'raster', title: 'Sends, px', cell: ({ raster }) => (raster ? `${raster.width} × ${raster.height}` : '–') },
  {
    key: 'need',
    title: 'Needs',
    cell: ({ needBps, isAtMost }) => `${isAtMost ? 'at most ' : ''}${format(needBps, 'bps', '–')}`,
  },
  { key: 'carries', title: 'Carries', cell: ({ carriesBps }) => format(carriesBps, 'bps') },
  { key: 'left', title: 'Left', cell: ({ fits, marginShare }) => (fits ? format(marginShare, 'share', '–') : '–') },
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
