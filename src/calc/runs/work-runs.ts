import type { Source, Step } from '../chapter';
import type { RunsInputs } from './compute-runs';
import type { RunsResults, SurfaceRuns } from './run-result';

const counted: Source = { kind: 'practice', text: 'one run a port, counted from the wiring' };
const bound: Source = {
  kind: 'practice',
  text: 'no wiring of the zone can take fewer: panels and pixels over what a port takes, or a sharper bound of the search',
};

/** How the ports used, the least possible and the share of the fullest port come about. */
export function workRuns({ surfaces, ports }: RunsInputs, results: RunsResults): Step[] {
  if (results.runs.length === 0) return [];
  return [
    ...results.surfaces.flatMap((surface, i) => {
      const { letter, surfaceId } = surfaces.surfaces[i]!;
      const zones = results.zones.filter((zone) => zone.surfaceId === surfaceId);
      if (zones.length === 0) return [];
      return [
        sumOfZones(
          `ports used on ${letter}`,
          'ports',
          zones.map((zone) => zone.ports),
          surface.ports,
          counted,
        ),
        sumOfZones(
          `least ports on ${letter}`,
          'least',
          zones.map((zone) => zone.portsLeast),
          surface.portsLeast,
          bound,
        ),
        ...fullest(letter, ports.surfaces[i]!.capacityPixels, surfaceId, results),
      ];
    }),
    ...total('ports used', 'ports', results, ({ ports: used }) => used, results.portsUsed, counted),
    ...total('least ports', 'least', results, ({ portsLeast }) => portsLeast, results.portsLeast, bound),
  ];
}

/** Zones that need as many ports are written once: '10 * ports1 + 1 * ports2'. */
function sumOfZones(figure: string, symbol: string, parts: readonly number[], value: number, source: Source): Step {
  const times = new Map<number, number>();
  for (const part of parts) times.set(part, (times.get(part) ?? 0) + 1);
  const numbers: Record<string, number> = {};
  const terms = [...times].map(([part, zones], i) => {
    numbers[`zones${i + 1}`] = zones;
    numbers[`${symbol}${i + 1}`] = part;
    return `zones${i + 1} * ${symbol}${i + 1}`;
  });
  return { figure, symbol, expression: terms.join(' + '), numbers, value, unit: 'count', source };
}

function fullest(letter: string, capacity: number, surfaceId: string, { runs }: RunsResults): Step[] {
  const own = runs.filter((run) => run.surfaceId === surfaceId);
  const most = own.reduce((a, b) => (b.pixels > a.pixels ? b : a));
  if (capacity <= 0) return [];
  return [
    {
      figure: `fullest port of ${letter}, ${most.port}`,
      symbol: 'share',
      expression: 'pixels / capacity',
      numbers: { pixels: most.pixels, capacity },
      value: most.share,
      unit: 'share',
      source: { kind: 'practice', text: 'before the free share is taken' },
    },
  ];
}

function total(
  figure: string,
  symbol: string,
  { surfaces }: RunsResults,
  of: (surface: SurfaceRuns) => number,
  value: number,
  source: Source,
): Step[] {
  if (surfaces.length < 2) return [];
  const names = surfaces.map((_, i) => `surface${i + 1}`);
  const numbers = Object.fromEntries(surfaces.map((surface, i) => [names[i]!, of(surface)]));
  return [{ figure, symbol, expression: names.join(' + '), numbers, value, unit: 'count', source }];
}
