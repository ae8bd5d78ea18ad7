import type { AskedOpening } from '../../../calc/finder/asked-opening';
import type { Build, ExactFigures, LeastFigures } from '../../../calc/finder/build';
import type { BuildWeighed } from '../../../calc/finder/weigh-builds';
import type { Unit } from '../../../units/unit';
import type { FigureColumn } from '../../widgets/FigureTable';
import type { Format } from '../../widgets/use-format';

/** What a search found of signal and power so far, by the build's key. */
export interface Weighed {
  readonly least: ReadonlyMap<string, LeastFigures | null>;
  readonly exact: ReadonlyMap<string, ExactFigures | null>;
}

export function gatherWeighed(items: readonly BuildWeighed[]): Weighed {
  const least = new Map<string, LeastFigures | null>();
  const exact = new Map<string, ExactFigures | null>();
  for (const item of items) {
    if ('least' in item) least.set(item.key, item.least);
    else exact.set(item.key, item.exact);
  }
  return { least, exact };
}

const notYet = '…';

/** An exact figure where it is known, else its bound marked as one. */
function weighedFigure({ key }: Build, name: keyof LeastFigures, unit: Unit, weighed: Weighed, format: Format): string {
  const exact = weighed.exact.get(key);
  if (exact === null) return 'none';
  if (exact !== undefined) return format(exact[name], unit, 'none drives it');
  const least = weighed.least.get(key)?.[name] ?? 0;
  return least > 0 ? `at least ${format(least, unit)}` : notYet;
}

function heightWords({ heightMm, withinStack, underHall }: Build, format: Format): string {
  const over = [...(withinStack ? [] : ['above its stack']), ...(underHall ? [] : ['above the clear height'])];
  return [format(heightMm, 'mm'), ...over].join(', ');
}

function openingTitle(from: AskedOpening['from'] | null): string {
  if (from === 'vehicle') return 'Opening, not stated: taken as wide as what drives in';
  return from === 'closed' ? 'Opening, not stated: taken as closed' : 'Opening';
}

export interface BuildRows {
  readonly weighed: Weighed;
  readonly format: Format;
  /** What the opening is taken from; null where the form asks for none. */
  readonly openingFrom: AskedOpening['from'] | null;
}

/** Figures of shape, from the wish alone. */
export function shapeRows({ format, openingFrom }: Omit<BuildRows, 'weighed'>): readonly FigureColumn<Build>[] {
  return [
    { key: 'across', title: 'Inside diameter', cell: ({ acrossMm }) => format(acrossMm, 'mm') },
    {
      key: 'opening',
      title: openingTitle(openingFrom),
      cell: ({ openingMm, letsIn }) =>
        `${format(openingMm, 'mm', 'none')}${letsIn ? '' : ', no way in for what drives in'}`,
    },
    { key: 'height', title: 'Height', cell: (build) => heightWords(build, format) },
    { key: 'lattice', title: 'Columns × rows', cell: ({ columns, rows }) => `${columns} × ${rows}` },
    { key: 'panels', title: 'Panels', cell: ({ panels }) => format(panels, 'count') },
    { key: 'worst', title: 'Off the circle', cell: ({ worstMm }) => format(worstMm, 'mm', 'flat') },
    {
      key: 'room',
      title: 'Room in the hall',
      cell: ({ roomMm }) =>
        roomMm !== null && roomMm < 0 ? `too small by ${format(-roomMm, 'mm')}` : format(roomMm, 'mm', 'not stated'),
    },
    { key: 'area', title: 'Area', cell: ({ areaM2 }) => format(areaM2, 'm2') },
    { key: 'pixels', title: 'Pixels', cell: ({ pixels }) => format(pixels, 'px') },
    { key: 'mass', title: 'Mass', cell: ({ massKg }) => format(massKg, 'kg') },
    { key: 'price', title: 'Panels cost', cell: ({ price }) => format(price, 'money', 'not stated') },
  ];
}

/** Figures of the whole stage with the build in it. */
export function weighedRows({ weighed, format }: Omit<BuildRows, 'openingFrom'>): readonly FigureColumn<Build>[] {
  const row = (key: keyof LeastFigures, title: string, unit: Unit): FigureColumn<Build> => ({
    key,
    title,
    cell: (build) => weighedFigure(build, key, unit, weighed, format),
  });
  return [row('processors', 'Processors', 'count'), row('ports', 'Ports', 'count'), row('worstLegA', 'Worst leg', 'A')];
}
