import { useMemo } from 'react';
import { pathData } from '../../files/path-data';
import type { Page, PageItem, PageText } from '../../sheets/pages/page';
import './page-view.css';

/** One printed page on the screen, as wide as there is room: what the PDF shows, always light. */
export function PageView({ page }: { readonly page: Page }) {
  const { widthMm, heightMm, title } = page;
  const items = useMemo(() => page.items.map(drawItem), [page]);
  return (
    <svg className="page-view" viewBox={`0 0 ${widthMm} ${heightMm}`} role="img" aria-label={title}>
      <rect width={widthMm} height={heightMm} fill="#ffffff" />
      {items}
    </svg>
  );
}

function drawItem(item: PageItem, place: number) {
  if (item.kind === 'text') return <TextOf key={place} item={item} />;
  if (item.kind === 'link') return null;
  const { lines, fill, stroke } = item;
  return (
    <path
      key={place}
      d={pathData(lines)}
      fill={fill ?? 'none'}
      stroke={stroke?.colour ?? 'none'}
      strokeWidth={stroke?.widthMm}
      strokeDasharray={stroke?.dashesMm.join(' ')}
    />
  );
}

function TextOf({ item }: { readonly item: PageText }) {
  const { text, xMm, yMm, sizeMm, face, align, turned, colour } = item;
  return (
    <text
      x={xMm}
      y={yMm}
      className={`page-${face}`}
      fontSize={sizeMm}
      fill={colour}
      textAnchor={align}
      transform={turned ? `rotate(-90 ${xMm} ${yMm})` : undefined}
    >
      {text}
    </text>
  );
}
