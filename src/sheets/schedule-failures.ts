import type { FaultsResults } from '../calc/faults/fault-result';
import type { Schedule } from './schedule';
import { figures, words } from './schedule-column';

/** The ten worst single failures: what fails, where it is, and what goes dark. */
export function scheduleFailures({ worst }: Pick<FaultsResults, 'worst'>): Schedule {
  return {
    id: 'failures',
    title: 'Worst single failures',
    columns: [
      words('part', 'What fails'),
      figures('panels', 'Panels lost', 'count'),
      figures('share', 'Of the stage', 'share'),
      words('surfaces', 'Of each surface'),
      figures('without', 'Without returns', 'count'),
      words('where', 'Where it is'),
    ],
    count: worst.length,
    row: (index) => {
      const { name, panels, share, surfaces, panelsWithoutReturns, where } = worst[index]!;
      return [name, panels, share, surfaces.map(surfaceCell).join(', '), panelsWithoutReturns, where];
    },
    panelOf: () => null,
    totals: null,
  };
}

/** 'A 33 %': whole per cent, and at least one where a panel is lost; never broken over two lines. */
function surfaceCell({ letter, share }: { readonly letter: string; readonly share: number }): string {
  return `${letter}\u00a0${Math.max(1, Math.round(share * 100))}\u00a0%`;
}
