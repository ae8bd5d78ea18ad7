import type { Headline } from '../../../calc/evaluation';
import type { Mode } from '../../../plan/picture';
import { modeWords } from '../../bench/mode-words';
import type { PageId } from '../../state/pages';
import type { Format } from '../../widgets/use-format';

export interface SummaryFigure {
  readonly name: string;
  readonly value: string;
  /** Page that works it out. */
  readonly page: PageId;
}

function panelsAPort({ panelsPerPortMin: least, panelsPerPortMax: most }: Headline): string {
  if (least === null || most === null) return 'not known';
  return least === most ? String(most) : `${least} to ${most}`;
}

/** What the plan comes to, in the order in which a builder asks. */
export function summaryFigures(headline: Headline, mode: Mode, format: Format): readonly SummaryFigure[] {
  return [
    { name: 'Panels', value: format(headline.panels, 'count'), page: 'walls' },
    { name: 'Columns and rows', value: `${headline.columns} × ${headline.rows}`, page: 'walls' },
    { name: 'Inside diameter', value: format(headline.insideDiameterMm, 'mm', 'none'), page: 'walls' },
    {
      name: 'Opening',
      value: format(headline.openingMm, 'mm', headline.columns === 0 ? 'none' : 'not a ring'),
      page: 'walls',
    },
    { name: 'Wall height', value: format(headline.wallHeightMm, 'mm', 'none'), page: 'walls' },
    { name: 'Pixels', value: format(headline.pixels, 'px'), page: 'picture' },
    { name: 'Rate and depth', value: modeWords(mode), page: 'picture' },
    { name: 'Processors', value: format(headline.processors, 'count'), page: 'zones' },
    { name: 'Breakouts', value: format(headline.breakouts, 'count'), page: 'zones' },
    { name: 'Ports used', value: format(headline.portsUsed, 'count'), page: 'runs' },
    { name: 'Ports, least possible', value: format(headline.portsLeast, 'count'), page: 'runs' },
    { name: 'Panels a port', value: panelsAPort(headline), page: 'runs' },
    { name: 'Fullest port', value: format(headline.fullestPortShare, 'share'), page: 'runs' },
    { name: 'Circuits', value: format(headline.circuits, 'count'), page: 'power' },
    { name: 'Worst leg', value: format(headline.worstLegA, 'A'), page: 'power' },
    { name: 'Neutral', value: format(headline.neutralA, 'A'), page: 'power' },
    { name: 'Power, full white', value: format(headline.powerMaxW, 'W'), page: 'power' },
    { name: 'Heat, full white', value: format(headline.heatTons, 'tons'), page: 'heat' },
    { name: 'Mass', value: format(headline.massKg, 'kg'), page: 'masses' },
    { name: 'Price, all bought new', value: format(headline.priceTotal, 'money'), page: 'materials' },
  ];
}
