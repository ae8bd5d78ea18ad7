import type { Command } from '../../../plan/commands';
import type { Plan } from '../../../plan/plan';
import type { Evaluation } from '../../evaluation';
import type { LeverStep } from '../lever';

function setSignal(key: keyof Plan['signal'], value: unknown, label: string): Command {
  return { name: 'set-fields', args: { fields: [{ path: ['signal', key], value }], label } };
}

/** Less kept free on every port, percent by percent. */
export function freeShareSteps(plan: Plan): readonly LeverStep[] {
  const now = plan.signal.freeShare;
  const below = Math.ceil(Number((now * 100).toFixed(6))) - 1;
  return Array.from({ length: Math.max(0, below + 1) }, (_, i) => (below - i) / 100).map((free) => ({
    from: { value: now, unit: 'share' },
    to: { value: free, unit: 'share' },
    command: setSignal('freeShare', free, 'share kept free on a port'),
    buys: 0,
  }));
}

/** A wiring that spares ports before all else. */
export function wiringSteps(plan: Plan, evaluation: Evaluation): readonly LeverStep[] {
  if (plan.signal.priority === 'fewest-ports') return [];
  const { portsUsed, portsLeast } = evaluation.runs.results;
  return [
    {
      from: { value: portsUsed, unit: 'count' },
      to: { value: portsLeast, unit: 'count' },
      choice: 'Fewest ports first',
      command: setSignal('priority', 'fewest-ports', 'first of all'),
      buys: 0,
    },
  ];
}

/** Entries higher up: to the lower edge of the next row, and the next. A ladder or a platform is then part of the job. */
export function reachSteps(plan: Plan, evaluation: Evaluation): readonly LeverStep[] {
  const edges = new Set<number>();
  for (const wall of evaluation.walls.results.walls) {
    const { table } = wall;
    for (let i = 0; i < table.count; i++) {
      const type = table.types[table.type[i]!]!;
      edges.add(Math.round((table.zMm[i]! - type.heightMm / 2) * 1000) / 1000);
    }
  }
  const now = plan.signal.reachMm;
  return [...edges]
    .filter((edgeMm) => edgeMm > now)
    .sort((a, b) => a - b)
    .map((edgeMm) => ({
      from: { value: now, unit: 'mm' },
      to: { value: edgeMm, unit: 'mm' },
      command: setSignal('reachMm', edgeMm, 'highest entry in reach'),
      buys: 0,
    }));
}

/** The user's own limit of panels a port, raised and then lifted. */
export function panelsMostSteps(plan: Plan, evaluation: Evaluation): readonly LeverStep[] {
  const now = plan.signal.panelsMost;
  if (now === null) return [];
  const most = Math.max(
    now,
    ...evaluation.ports.results.surfaces.flatMap((s) =>
      s.byType.map((t) => Math.floor(t.usablePixels / Math.max(1, t.panelPixels))),
    ),
  );
  return Array.from({ length: Math.min(200, most - now) }, (_, i) => now + 1 + i).map((panels) => ({
    from: { value: now, unit: 'count' },
    to: { value: panels, unit: 'count' },
    command: setSignal('panelsMost', panels, 'panels a port'),
    buys: 0,
  }));
}

/** Zones as wide as the processor takes, where the user had narrowed them. */
export function zoneWidthSteps(plan: Plan): readonly LeverStep[] {
  const narrowed = plan.signal.bySurface.filter((entry) => entry.zoneColumnsMost !== null || entry.zonesUp !== null);
  const narrowest = Math.min(...narrowed.map((entry) => entry.zoneColumnsMost ?? 5000));
  if (narrowed.length === 0) return [];
  return [
    {
      from: { value: narrowest, unit: 'count' },
      to: { value: narrowest, unit: 'count' },
      choice: 'Zones as wide as the processor takes',
      command: setSignal(
        'bySurface',
        plan.signal.bySurface.map((entry) => ({ ...entry, zoneColumnsMost: null, zonesUp: null })),
        'zone width',
      ),
      buys: 0,
    },
  ];
}
