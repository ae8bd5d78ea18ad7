import type { Check } from '../chapter';
import type { PanelPower } from '../panels/panel-views';
import { earthLeakage } from '../tables/earth-leakage';
import type { PowerInputs } from './compute-power';
import type { PowerResults } from './power-result';
import { usedPanels } from './used-panels';

/** Panels of one type behind one residual-current device of 30 mA. Source: IEC 60364-5-53, from memory. */
export function panelsBehindDevice(leakageMa: number): number {
  return Math.floor((earthLeakage.share * earthLeakage.tripMa) / leakageMa + 1e-9);
}

/**
 * Standing leakage of the panels on one circuit, if that circuit had a device of its own of 30 mA. The plan does not state the
 * devices, so this never marks the chapter.
 */
export function checkLeakage({ panels, surfaces }: PowerInputs, { circuits, order }: PowerResults): Check[] {
  const used = usedPanels({ panels, surfaces });
  const leakageOf = (panel: PanelPower) => panel.power.leakageMa ?? 0;
  if (circuits.length === 0 || order.length === 0) return [];
  const common = { id: 'power.leakage', chapter: 'power', unit: 'count' } as const;
  const unstated = used.filter((panel) => panel.power.leakageMa === null);
  if (unstated.length > 0) {
    return [
      {
        ...common,
        severity: 'offer',
        measured: null,
        limit: null,
        where: unstated.slice(0, 50).map((panel) => ({ kind: 'item', name: panel.name })),
        sentence:
          'The earth leakage of these panels is not stated, so how many one residual-current device stands cannot be said.',
      },
    ];
  }
  const leakiest = used.reduce((a, b) => (leakageOf(b) > leakageOf(a) ? b : a), used[0]!);
  if (used.length === 0 || leakageOf(leakiest) === 0) return [];
  const limit = panelsBehindDevice(leakageOf(leakiest));
  const most = circuits.reduce((a, b) => (b.count > a.count ? b : a));
  return [
    {
      ...common,
      severity: most.count > limit ? 'offer' : 'pass',
      measured: most.count,
      limit,
      where: [
        { kind: 'circuit', name: `circuit ${most.name}` },
        { kind: 'item', name: leakiest.name },
      ],
      sentence:
        'The longest circuit has {measured} panels; a residual-current device of 30 mA on each circuit stands the leakage of {limit}. Choose the devices with an electrician.',
    },
  ];
}
