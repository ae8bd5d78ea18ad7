import type { Check } from '../chapter';
import type { HeatResults } from './heat-result';

/** Heat at full white against the cooling on site. */
export function checkHeat(coolingW: number | null, { fullWhiteW, typicalW }: HeatResults): Check[] {
  if (fullWhiteW === 0) return [];
  const base = {
    id: 'heat.cooling',
    chapter: 'heat' as const,
    measured: fullWhiteW,
    limit: coolingW,
    unit: 'W' as const,
    where: [{ kind: 'field' as const, name: 'wish.coolingW' }],
    values: { typical: { value: typicalW, unit: 'W' as const } },
  };
  if (coolingW === null) {
    return [
      {
        ...base,
        severity: 'offer',
        sentence: 'Full white gives {measured} of heat; the cooling on site is not stated.',
      },
    ];
  }
  if (fullWhiteW <= coolingW) {
    return [{ ...base, severity: 'pass', sentence: 'The cooling carries full white: {measured} of {limit}.' }];
  }
  return typicalW <= coolingW
    ? [
        {
          ...base,
          severity: 'watch',
          sentence:
            'Full white gives {measured}, more than the cooling of {limit}; the typical picture gives {typical}.',
        },
      ]
    : [
        {
          ...base,
          severity: 'stop',
          sentence:
            'Even the typical picture gives {typical}, more than the cooling of {limit}; full white gives {measured}.',
        },
      ];
}
