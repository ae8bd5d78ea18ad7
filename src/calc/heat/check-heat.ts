import type { Heat } from '../../plan/site';
import type { Check } from '../chapter';
import type { HeatResults } from './heat-result';

/** What the heat is held against. */
export interface HeatLimits {
  /** Cooling on site; null: not stated. */
  readonly coolingW: number | null;
  readonly heat: Pick<Heat, 'roomRiseK'>;
}

/** Heat at full white and typically against the cooling on site in watts; null where nobody stated it. */
function checkCooling(coolingW: number | null, { fullWhiteW, typicalW }: HeatResults): Check {
  const common = {
    id: 'heat.cooling',
    chapter: 'heat',
    measured: fullWhiteW,
    limit: coolingW,
    unit: 'W',
    where: [{ kind: 'field', name: 'wish.coolingW' }],
    values: { typical: { value: typicalW, unit: 'W' } },
  } as const;
  if (coolingW === null) {
    const sentence =
      'The room takes up {measured} at full white and {typical} typically; the cooling on site is not stated.';
    return { ...common, severity: 'offer', sentence };
  }
  if (fullWhiteW <= coolingW) {
    const sentence = 'The room takes up {measured} at full white; cooling carries away {limit}.';
    return { ...common, severity: 'pass', sentence };
  }
  return typicalW <= coolingW
    ? {
        ...common,
        severity: 'watch',
        sentence:
          'Cooling of {limit} carries away the {typical} of a typical picture, not the {measured} of full white: keep white short.',
      }
    : {
        ...common,
        severity: 'stop',
        sentence: 'Cooling carries away {limit}; the room takes up {typical} typically and {measured} at full white.',
      };
}

/** How long the air alone holds out without cooling. Nobody states how long a shoot must, so this never marks the chapter. */
function checkWarmUp({ roomRiseK }: HeatLimits['heat'], { warmUpMin }: HeatResults): Check {
  const isKnown = warmUpMin !== null;
  return {
    id: 'heat.warm-up',
    chapter: 'heat',
    severity: 'offer',
    measured: warmUpMin,
    limit: null,
    unit: 'min',
    where: [{ kind: 'field', name: isKnown ? 'heat.roomRiseK' : 'wish.hall' }],
    sentence: isKnown
      ? 'Without cooling, full white warms the air of the hall by {rise} in {measured}; walls and floor take up heat too, so in truth it takes longer.'
      : 'The hall is not stated, so how soon it warms up without cooling cannot be said.',
    values: { rise: { value: roomRiseK, unit: 'K' } },
  };
}

/** Every check of the Heat chapter; none where nothing gives heat. */
export function checkHeat({ coolingW, heat }: HeatLimits, results: HeatResults): Check[] {
  return results.fullWhiteW > 0 ? [checkCooling(coolingW, results), checkWarmUp(heat, results)] : [];
}
